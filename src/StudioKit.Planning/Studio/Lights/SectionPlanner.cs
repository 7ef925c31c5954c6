using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>The studio seen from the side: lengths behind the panel's front edge and over the ground.</summary>
internal sealed class SectionPlanner(KitSpec kit, PanelPlan panel, LightPanel sheet, FrameResult? frame)
{
    private const int ArcSteps = 24;

    // The five-times rule: beyond, a matt disc is within 1 % of the inverse-square law.
    private const double FarInSides = 5;

    /// <summary>Panel and pipes.</summary>
    public StudioSection Section => new(Profile(), frame is null ? [] : [.. Pipes(frame)]);

    /// <summary>Where a flash is fixed.</summary>
    public FlashBelowPlan FlashAt(LightSpec light, Emitter emitter)
    {
        var place = Side(emitter.Centre);
        return new FlashBelowPlan
        {
            Flash = light.Flash,
            Modifier = light.Modifier,
            Zoom = LightingCases.Flash(kit, light).Zoom,
            Distance = light.Distance,
            OverGround = place.Up,
            FromLeft = LowerFlashes.FromLeft(panel, light),
            FromRight = panel.Width - LowerFlashes.FromLeft(panel, light),
            FromFront = LowerFlashes.FromFront(panel, light),
            FromBack = panel.FlatDepth - LowerFlashes.FromFront(panel, light),
            Tilt = Angle.FromRadians(Math.Acos(Math.Clamp(emitter.Orientation.Axis.Z, -1, 1))),
            WindowWidth = emitter.Width,
            WindowHeight = emitter.Height,
            InverseSquareFrom = UnitMath.Max(emitter.Width, emitter.Height) * FarInSides,
            NearFieldShortfall = Stops.FromRatio(NearField.RectangleFactor(emitter.Width, emitter.Height, light.Distance)),
            Window = [.. new[] { -0.5, 0.5 }.Select(end => Side(emitter.Centre.Along(emitter.Orientation.Along, end * emitter.Height.Meters)))],
        };
    }

    /// <summary>What the camera looks along.</summary>
    public SightLine Sight(CameraView view, IReadOnlyList<PanelPlace> patch)
    {
        var aim = new Position(0, view.SubjectBack.Meters, (sheet.Height + view.SubjectHeight).Meters);
        var (sin, cos) = Math.SinCos(view.Pitch.Radians);
        var distance = view.PupilDistance.Meters;
        var pupil = aim with { Y = aim.Y - (distance * cos), Z = aim.Z + (distance * sin) };
        return new SightLine(
            Side(pupil),
            Side(aim),
            patch.Count == 0 ? null : Side(sheet.At(patch.MinBy(place => place.AlongSheet))),
            patch.Count == 0 ? null : Side(sheet.At(patch.MaxBy(place => place.AlongSheet))));
    }

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
