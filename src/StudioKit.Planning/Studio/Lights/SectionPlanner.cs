using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>The studio seen from the side: lengths behind the panel's front edge and over the ground.</summary>
internal sealed class SectionPlanner(KitSpec kit, PanelPlan panel, LightPanel sheet, FrameResult? frame)
{
    private const int ArcSteps = 24;

    /// <summary>Panel and pipes.</summary>
    public StudioSection Section => new(Profile(), frame is null ? [] : [.. Pipes(frame)]);

    /// <summary>Where a flash is fixed.</summary>
    public FlashBelowPlan FlashAt(LightSpec light, Emitter emitter)
    {
        var (left, front) = (LowerFlashes.FromLeft(panel, light), LowerFlashes.FromFront(panel, light));
        return SideView.Flash(kit, light, emitter, Side, (left, panel.Width - left, front, panel.FlatDepth - front));
    }

    /// <summary>What the camera looks along.</summary>
    public SightLine Sight(CameraView view, IReadOnlyList<PanelPlace> patch) => SideView.Sight(view, sheet, patch, Side);

    private IReadOnlyList<SidePoint> Profile()
    {
        var flat = sheet.Depth - sheet.SweptLength;
        return sheet.IsSwept
            ? [At(Length.Zero), .. Enumerable.Range(0, ArcSteps + 1).Select(i => At(flat + (sheet.SweptLength * ((double)i / ArcSteps))))]
            : [At(Length.Zero), At(sheet.Depth)];
    }

    private SidePoint At(Length alongSheet) => Side(sheet.At(new PanelPlace(Length.Zero, alongSheet)));

    private SidePoint Side(Position place) => new(Length.FromMeters(place.Y) + (sheet.Depth / 2), Length.FromMeters(place.Z));

    private IEnumerable<SidePipe> Pipes(FrameResult built)
    {
        var places = built.Joints.ToDictionary(joint => joint.Label, joint => Side(joint.Position), StringComparer.Ordinal);
        return built.Members
            .Select(member => new SidePipe(places[member.From], places[member.To], kit.Frame.Pipe.OutsideDiameter))
            .Distinct();
    }

    // The frame counts from under the middle of the flat part.
    private SidePoint Side(FramePoint point) =>
        new(Length.FromMeters(point.Back) + ((sheet.Depth - sheet.SweptLength) / 2), Length.FromMeters(point.Up));
}
