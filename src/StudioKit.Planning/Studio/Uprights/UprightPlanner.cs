using StudioKit.Kits;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Frames;
using StudioKit.Planning.Studio.Panels;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Framings and camera pitches → the upright sheets that fill every frame.</summary>
internal static class UprightPlanner
{
    // What a ruler is read to: a view that looks less far under the sheet is not told.
    private static readonly Length Told = Length.FromMillimeters(0.5);

    /// <summary>Every upright sheet that a set-up uses.</summary>
    public static ValueList<UprightPlan> Plan(KitSpec kit, IReadOnlyList<PlannedFraming> framings) =>
        [.. kit.Uprights.Where(upright => kit.SetUps.Any(setUp => setUp.Upright == upright.Name)).Select(upright => Plan(kit, upright, framings))];

    private static UprightPlan Plan(KitSpec kit, UprightSpec upright, IReadOnlyList<PlannedFraming> framings)
    {
        var setUps = kit.SetUps.Where(setUp => setUp.Upright == upright.Name).ToList();
        var needs = setUps.SelectMany(setUp => UprightSight.Of(kit, setUp, framings)).Select(UprightNeed.Of).ToList();
        var (requiredWidth, requiredHeight) = (Largest(needs.Select(need => need.Width)), Largest(needs.Select(need => need.Height)));
        var (width, height) = (upright.Width ?? PanelPlanner.RoundUp(requiredWidth), upright.Height ?? PanelPlanner.RoundUp(requiredHeight));
        var mass = width > Length.Zero && height > Length.Zero
            ? StudioMass.Of(FrameLoads.SheetOf(upright.Sheet), width, height, upright.Sheet.Mass)
            : new MassStatement(upright.Sheet.Mass ?? Mass.Zero, MassOrigin.FromGeometry);
        return new UprightPlan
        {
            Name = upright.Name,
            Carrier = upright.Carrier,
            RequiredWidth = requiredWidth,
            RequiredHeight = requiredHeight,
            Width = width,
            Height = height,
            SizeGiven = upright.Width is not null && upright.Height is not null,
            LowerEdge = upright.OverGround,
            Lean = upright.Lean,
            Places = [.. setUps.Select(setUp => new UprightPlace(setUp.Name, setUp.BackgroundDistance, !setUp.IsBeforeUpright))],
            LargestFraming = needs.MaxBy(need => need.Width.Meters * need.Height.Meters)?.Sight.Sight.Framing.Plan.Name,
            SeenUnder = [.. needs.Select(need => need.Gap).OfType<UprightGap>().Where(gap => gap.By is null || gap.By > Told)],
            Material = upright.Sheet.Material,
            Thickness = upright.Sheet.Thickness,
            Mass = mass.Mass,
            MassOrigin = mass.Origin,
        };
    }

    private static Length Largest(IEnumerable<Length> lengths) => lengths.DefaultIfEmpty(Length.Zero).Max();
}
