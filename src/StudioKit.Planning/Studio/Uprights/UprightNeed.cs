using StudioKit.Physics.Light.Views;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>What one view needs of an upright sheet.</summary>
/// <param name="Sight">The view.</param>
/// <param name="Width">Width, margins and all.</param>
/// <param name="Height">Height from the lower edge, upper margin and all.</param>
/// <param name="Gap">What it sees under the lower edge; none where it sees nothing there, or the panel.</param>
internal sealed record UprightNeed(UprightSight Sight, Length Width, Length Height, UprightGap? Gap)
{
    /// <summary>What a view needs; no size where no upright sheet fills it, as it looks down past any.</summary>
    /// <param name="sight">The view.</param>
    /// <param name="highest">Highest sheet that counts as one.</param>
    public static UprightNeed Of(UprightSight sight, Length highest)
    {
        var margin = sight.Upright.Margin;
        if (PanelCoverage.TrySmallest([sight.ViewAt(Length.Zero)], margin, highest, highest, Length.Zero) is not { NeedsSweep: false } needed)
        {
            return new UprightNeed(sight, Length.Zero, Length.Zero, new UprightGap(sight.SetUp.Name, sight.Sight.Framing.Plan.Name, sight.Sight.Pitch, null));
        }

        var (below, above) = (needed.SubjectFromFront - margin, needed.Depth - needed.SubjectFromFront);
        var under = below - sight.FromLowerEdge;
        return new UprightNeed(sight, needed.Width, UnitMath.Max(Length.Zero, sight.FromLowerEdge + above), GapOf(sight, under));
    }

    // The panel lies under a sheet that stands on it, so that only what is between the two is a gap; the ground under one that stands where the plant grows is one.
    private static UprightGap? GapOf(UprightSight sight, Length under)
    {
        var by = sight.SetUp.IsBeforeUpright ? under : UnitMath.Min(under, sight.Upright.OverGround);
        return by > Length.Zero ? new UprightGap(sight.SetUp.Name, sight.Sight.Framing.Plan.Name, sight.Sight.Pitch, by) : null;
    }
}
