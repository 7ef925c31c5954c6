using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Checks;
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
    // A sheet without end, so that only a ray that never comes to it misses it.
    private static readonly LightPanel Endless = new() { Width = Length.FromKilometers(10), Depth = Length.FromKilometers(10), Height = Length.FromMeters(1) };

    /// <summary>What a view needs; no size where no upright sheet fills it, as it looks down past any.</summary>
    /// <param name="sight">The view.</param>
    public static UprightNeed Of(UprightSight sight)
    {
        var view = sight.ViewAt(Length.Zero);
        if (SceneCheck.ViewProblems(Endless, view).Count > 0 || VisiblePatch.Of(Endless, view) is not { OnPanel: 1 } patch)
        {
            return new UprightNeed(sight, Length.Zero, Length.Zero, new UprightGap(sight.SetUp.Name, sight.Sight.Framing.Plan.Name, sight.Sight.Pitch, null));
        }

        var along = patch.Outline.Select(place => place.AlongSheet - (Endless.Depth / 2) + sight.FromLowerEdge).ToList();
        var width = 2 * patch.Outline.Max(place => Math.Abs(place.Across.Meters));
        return new UprightNeed(sight, Length.FromMeters(width) + (sight.Upright.Margin * 2), UnitMath.Max(Length.Zero, along.Max() + sight.Upright.Margin), GapOf(sight, -along.Min()));
    }

    // The panel lies under a sheet that stands on it, so that only what is between the two is a gap; the ground under one that stands where the plant grows is one.
    private static UprightGap? GapOf(UprightSight sight, Length under)
    {
        var by = sight.SetUp.IsBeforeUpright ? under : UnitMath.Min(under, sight.Upright.OverGround);
        return by > Length.Zero ? new UprightGap(sight.SetUp.Name, sight.Sight.Framing.Plan.Name, sight.Sight.Pitch, by) : null;
    }
}
