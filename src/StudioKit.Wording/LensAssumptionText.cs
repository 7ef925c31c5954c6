using StudioKit.Physics.Optics;
using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>What was assumed of a lens, in words.</summary>
public static class LensAssumptionText
{
    /// <summary>One assumption with its uncertainty.</summary>
    /// <param name="assumption">The assumption.</param>
    public static string Of(LensAssumption assumption) => assumption.Kind switch
    {
        LensAssumptionKind.FrontGlassToMount => $"front glass to mount {Millimetres(assumption)}",
        LensAssumptionKind.PrincipalPlanes => $"principal planes {Millimetres(assumption)} apart",
        LensAssumptionKind.PupilRatio => FormattableString.Invariant($"pupil ratio {assumption.Value:0.##} ± {assumption.Uncertainty:0.##}"),
        LensAssumptionKind.FocalLengthCloseUp => $"focal length at closest focus {Millimetres(assumption)}",
        _ => FormattableString.Invariant($"width of the pupil while focusing ± {assumption.Uncertainty:0.##} stops"),
    };

    /// <summary>All that was assumed of a lens, one sentence; none where nothing was.</summary>
    /// <param name="lens">Name of the lens.</param>
    /// <param name="assumptions">What was assumed.</param>
    public static string? Of(string lens, IReadOnlyList<LensAssumption> assumptions)
    {
        ArgumentNullException.ThrowIfNull(assumptions);
        return assumptions.Count == 0 ? null : $"Assumed of {lens}: {string.Join(", ", assumptions.Select(Of))}. To be surer {string.Join("; ", assumptions.Select(Measurement).Distinct())}.";
    }

    /// <summary>The sentences for the lenses of a plan's framings, each lens at its largest magnification.</summary>
    /// <param name="framings">The framings.</param>
    public static IEnumerable<string> Of(IEnumerable<FramingPlan> framings) => framings
        .GroupBy(framing => framing.Lens)
        .Select(lens => Of(lens.Key, lens.MaxBy(framing => framing.Magnification.Value)!.Assumptions))
        .OfType<string>();

    // What to measure, and the lens's key in the kit that takes it.
    private static string Measurement(LensAssumption assumption) => assumption.Kind switch
    {
        LensAssumptionKind.FrontGlassToMount => "measure from front glass to mount ('length')",
        LensAssumptionKind.PupilRatio => "look through the lens from behind and from in front and divide the widths of its opening ('pupil-ratio')",
        LensAssumptionKind.PrincipalPlanes or LensAssumptionKind.FocalLengthCloseUp =>
            "focus as near as it goes on a rule, measure from rule to sensor plane and what of the rule the frame shows ('closest-focus', 'largest-magnification'), and go by the room that you find before the glass",
        _ => "meter an even wall focused far and near: the stops between the two are the lens's loss",
    };

    private static string Millimetres(LensAssumption assumption) =>
        PlanFormat.GiveOrTake(Length.FromMeters(assumption.Value), Length.FromMeters(assumption.Uncertainty));
}
