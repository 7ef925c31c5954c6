using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>What the side view of a lit sheet shows of camera and flashes, wherever the view counts from.</summary>
internal static class SideView
{
    // The five-times rule: beyond, a matt disc is within 1 % of the inverse-square law.
    private const double FarInSides = 5;

    /// <summary>What the camera looks along.</summary>
    /// <param name="view">The camera's view.</param>
    /// <param name="sheet">The sheet, as the light calculation has it.</param>
    /// <param name="patch">What the view sees of it.</param>
    /// <param name="side">Where a place of the light calculation lies in the side view.</param>
    public static SightLine Sight(CameraView view, LightPanel sheet, IReadOnlyList<PanelPlace> patch, Func<Position, SidePoint> side)
    {
        var aim = new Position(0, view.SubjectBack.Meters, (sheet.Height + view.SubjectHeight).Meters);
        var (sin, cos) = Math.SinCos(view.Pitch.Radians);
        var distance = view.PupilDistance.Meters;
        return new SightLine(
            side(aim with { Y = aim.Y - (distance * cos), Z = aim.Z + (distance * sin) }),
            side(aim),
            patch.Count == 0 ? null : side(sheet.At(patch.MinBy(place => place.AlongSheet))),
            patch.Count == 0 ? null : side(sheet.At(patch.MaxBy(place => place.AlongSheet))));
    }

    /// <summary>A flash under a sheet, or behind one that lies on its back.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="light">The flash as the set-up has it.</param>
    /// <param name="emitter">The flash as the light calculation has it.</param>
    /// <param name="side">Where a place of the light calculation lies in the side view.</param>
    /// <param name="from">Middle of its window from the sheet's edges.</param>
    public static FlashBelowPlan Flash(
        KitSpec kit, LightSpec light, Emitter emitter, Func<Position, SidePoint> side, (Length Left, Length Right, Length Front, Length Back) from) => new()
        {
            Flash = light.Flash,
            Modifier = light.Modifier,
            Zoom = LightingCases.Flash(kit, light).Zoom,
            Distance = light.Distance,
            OverGround = side(emitter.Centre).Up,
            FromLeft = from.Left,
            FromRight = from.Right,
            FromFront = from.Front,
            FromBack = from.Back,
            Tilt = Angle.FromRadians(Math.Acos(Math.Clamp(emitter.Orientation.Axis.Z, -1, 1))),
            WindowWidth = emitter.Width,
            WindowHeight = emitter.Height,
            InverseSquareFrom = UnitMath.Max(emitter.Width, emitter.Height) * FarInSides,
            NearFieldShortfall = Stops.FromRatio(NearField.RectangleFactor(emitter.Width, emitter.Height, light.Distance)),
            Window = [.. new[] { -0.5, 0.5 }.Select(end => side(emitter.Centre.Along(emitter.Orientation.Along, end * emitter.Height.Meters)))],
        };
}
