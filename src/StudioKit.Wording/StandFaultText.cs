using StudioKit.Planning;
using StudioKit.Planning.Standing;

namespace StudioKit.Wording;

/// <summary>What is wrong with where a light about the subject stands, in words.</summary>
internal static class StandFaultText
{
    /// <summary>A sentence.</summary>
    public static string Of(LightStandPlan stand, LightFault fault) => $"{stand.SetUp}, {stand.Framing}{At(fault)}: {Clause(stand, fault)}.";

    private static string At(LightFault fault) => fault.Pitch is { } pitch ? $", camera at {MeasureFormat.Degrees(pitch)}" : "";

    private static string Clause(LightStandPlan stand, LightFault fault) => fault.Kind switch
    {
        LightFaultKind.BehindLens => FormattableString.Invariant($"the lens hides {100 * fault.Share:0} % of {stand.Flash} from the subject"),
        LightFaultKind.InPicture => $"{stand.Flash}{(stand.Modifier is { } modifier ? $" with {modifier}" : "")} stands in the picture",
        LightFaultKind.HolderInPicture => $"what holds {stand.Flash} stands in the picture",
        LightFaultKind.MeetsLens => $"{stand.Flash} meets the lens",
        LightFaultKind.MeetsSheet => $"{stand.Flash} reaches through the sheet",
        LightFaultKind.MeetsFrame => $"{stand.Flash} meets a pipe of the frame",
        LightFaultKind.MeetsGround => $"{stand.Flash} reaches into the ground",
        LightFaultKind.OutOfReach => $"{stand.Holder} is {DistanceFormat.Centimetres(fault.By!.Value)} too short for {stand.Flash}",
        LightFaultKind.TooLow => $"{stand.Holder} does not go low enough for {stand.Flash}, by {DistanceFormat.Centimetres(fault.By!.Value)}",
        LightFaultKind.TooHigh => $"{stand.Holder} does not go high enough for {stand.Flash}, by {DistanceFormat.Centimetres(fault.By!.Value)}",
        LightFaultKind.Glare => $"the mirror image of {stand.Flash} in the sheet is {AdviceText.Amount(fault.Over!.Value)} over the veil's limit",
        LightFaultKind.Brightens => $"light from above brings the sheet {AdviceText.Amount(fault.Over!.Value)} over the veil's limit",
        _ => throw new ArgumentOutOfRangeException(nameof(fault), fault.Kind, "A fault without words."),
    };
}
