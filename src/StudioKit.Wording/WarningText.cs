using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;

namespace StudioKit.Wording;

/// <summary>What an exposure may spoil although it works, in words, with what the plan turns against it.</summary>
public static class WarningText
{
    /// <summary>All warnings of an exposure with what to turn, a sentence each.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <param name="advice">The advice of its plan.</param>
    public static IEnumerable<string> Of(ExposurePlan exposure, AdviceBook advice)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        ArgumentNullException.ThrowIfNull(advice);
        return exposure.Warnings.Select(warning => $"{Says(warning)} (common practice). {Turn(exposure, advice.Against(exposure, warning.Seen))}");
    }

    /// <summary>A warning where what to turn stands elsewhere on the sheet.</summary>
    /// <param name="warning">The warning.</param>
    public static string Says(ExposureWarning warning)
    {
        ArgumentNullException.ThrowIfNull(warning);
        return warning switch
        {
            ExposureWarning.EatsLegs eats => $"Light from below is {Tenths(eats.Uplight)} stops against that from above; from {eats.From.Nominal} it eats legs and hairs",
            ExposureWarning.EatsEdges eats => $"Light of the sheet behind is {Tenths(eats.Edge.AgainstKey)} stops against that on the subject at its {MemberText.Of(eats.Edge.Limb)} edge; from {eats.From.Nominal} it eats edges",
            _ => throw new ArgumentOutOfRangeException(nameof(warning), warning, "A warning without words."),
        };
    }

    private static string Turn(ExposurePlan exposure, SymptomAdvice? against) => against?.Advice is not { } advice
        ? "Nothing in the kit helps at this framing."
        : $"Against it: {AdviceText.Of(exposure, advice)}{(Left(against.Seen, advice.Promise) is { } left ? $", which leaves {Tenths(left)}" : "")}.";

    private static Stops? Left(Symptom seen, Promise promise) => seen == Symptom.EatenEdges ? promise.EdgeSpill : promise.Uplight;

    private static string Tenths(Stops stops) => FormattableString.Invariant($"{stops.Value:+0.0;-0.0;0.0}");
}
