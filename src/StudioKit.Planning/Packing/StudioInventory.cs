using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>The studio's own parts on the pack list: frame, panel, skirts.</summary>
internal static class StudioInventory
{
    public static IEnumerable<PackedItem> Of(KitSpec kit, PanelPlan panel, FramePlan frame)
    {
        yield return new PackedItem
        {
            Part = StudioPart.Frame,
            Name = $"frame, {frame.Geometry.Members.Count} pieces of {frame.PipeName} with fittings",
            Count = 1,
            Mass = frame.Mass,
            Origin = frame.MassOrigin,
            Stage = PackItemStage.SettingUp,
            Size = Bundle(kit.Frame.Pipe.OutsideDiameter, frame),
            Essential = false,
        };
        if (frame.RestMass > Mass.Zero)
        {
            yield return new PackedItem
            {
                Part = StudioPart.Rests,
                Name = FormattableString.Invariant($"strips under the panel, {frame.Geometry.Ledge.Rests.Count}, on their pipes"),
                Count = 1,
                Mass = frame.RestMass,
                Origin = MassOrigin.FromGeometry,
                Stage = PackItemStage.SettingUp,
                Essential = false,
            };
        }

        yield return new PackedItem
        {
            Part = StudioPart.Panel,
            Name = $"panel, {panel.Material}, {PlanFormat.Rectangle(panel.Width, panel.Depth)}",
            Sold = new SoldName($"panel, {panel.Material}", SoldForm.Sides, [panel.Width, panel.Depth]),
            Count = 1,
            Mass = panel.Mass,
            Origin = panel.MassOrigin,
            Stage = PackItemStage.SettingUp,
            Size = new BoxSize(panel.Width, panel.Depth, panel.Thickness),
            Fragile = true,
            Essential = false,
        };
        if (kit.Panel.Skirts)
        {
            yield return new PackedItem
            {
                Part = StudioPart.Skirts,
                Name = "skirts, four",
                Count = 1,
                Mass = frame.SkirtMass,
                Origin = MassOrigin.FromGeometry,
                Stage = PackItemStage.SettingUp,
                Essential = false,
            };
        }
    }

    /// <summary>Longest pipe of the frame.</summary>
    public static Length LongestPipe(FramePlan frame) => frame.Geometry.Members.Select(member => member.CutLength).Max();

    // Pipes side by side in a square, as long as the longest; fittings go into the gaps at its ends.
    private static BoxSize Bundle(Length diameter, FramePlan frame)
    {
        var side = Math.Ceiling(Math.Sqrt(frame.Geometry.Members.Count)) * diameter;
        return new BoxSize(LongestPipe(frame), side, side);
    }
}
