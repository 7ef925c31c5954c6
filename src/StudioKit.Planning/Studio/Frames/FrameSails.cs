using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>The upright sheet that a frame holds, as the wind meets it.</summary>
internal static class FrameSails
{
    /// <summary>The one that levers most; none where the frame holds none. One stands at a time.</summary>
    public static FrameSail? Of(IEnumerable<UprightStandPlan> uprights) => uprights
        .Where(upright => upright.Carrier == UprightCarrier.Frame)
        .Select(upright => new FrameSail(upright.Width, upright.Height, upright.LowerEdge, upright.CarrierMass + upright.SheetMass))
        .MaxBy(sail => sail.Width.Meters * sail.Height.Meters * (sail.LowerEdge.Meters + (sail.Height.Meters / 2)));

    /// <summary>Sheets that stand only in as much wind as the frame that holds them.</summary>
    /// <param name="uprights">What holds the upright sheets.</param>
    /// <param name="checks">The frame's checks with the sheet on it.</param>
    public static ValueList<UprightStandPlan> Limited(ValueList<UprightStandPlan> uprights, IReadOnlyList<StructuralCheck> checks) =>
        [.. uprights.Select(upright => upright.Carrier == UprightCarrier.Frame ? Limited(upright, checks) : upright)];

    // The wind's push on a frame grows by the square of the gust.
    private static UprightStandPlan Limited(UprightStandPlan upright, IReadOnlyList<StructuralCheck> checks)
    {
        var worst = checks.Where(check => check.Kind is StructuralCheckKind.Tipping or StructuralCheckKind.Sliding or StructuralCheckKind.Sway or StructuralCheckKind.Cords).MaxBy(check => check.Ratio);
        return worst is { Ratio: > 0 } && upright.Wind.Gust / Math.Sqrt(worst.Ratio) is var gust && gust < upright.HighestGust
            ? upright with { HighestGust = gust, Weakest = worst.Kind, TakeDownFrom = UprightStandPlanner.TakeDownFrom(gust / upright.Wind.GustOverMean) }
            : upright;
    }
}
