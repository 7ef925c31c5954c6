using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Light;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>An upright sheet seen from the side: lengths behind the subject's foot, and over the ground or the panel.</summary>
internal sealed class UprightSection
{
    private readonly LightPanel _sheet;
    private readonly Length _foot;
    private readonly Length _low;
    private readonly (double Sin, double Cos) _lean;

    public UprightSection(UprightSpec upright, SetUpSpec setUp, LightPanel sheet)
    {
        _sheet = sheet;
        _lean = Math.SinCos(upright.Lean.Radians);
        _low = upright.OverGround;
        _foot = setUp.BackgroundDistance + ((_low - UprightPlacing.Ground(setUp)) * (_lean.Sin / _lean.Cos));
    }

    /// <summary>Its lower edge.</summary>
    public SidePoint Lower => At(Length.Zero);

    /// <summary>Its upper edge.</summary>
    public SidePoint Upper => At(_sheet.Depth);

    /// <summary>A place that the light calculation knows, where the sheet lies on its back.</summary>
    public SidePoint Side(Position place)
    {
        var (along, before) = (Length.FromMeters(place.Y) + (_sheet.Depth / 2), Length.FromMeters(place.Z) - _sheet.Height);
        return new SidePoint(_foot + (along * _lean.Sin) - (before * _lean.Cos), _low + (along * _lean.Cos) + (before * _lean.Sin));
    }

    /// <summary>What the camera looks along.</summary>
    public SightLine Sight(CameraView view, IReadOnlyList<PanelPlace> patch) => SideView.Sight(view, _sheet, patch, Side);

    /// <summary>Where a flash behind it stands.</summary>
    public FlashBehindPlan FlashAt(LightSpec light, Emitter emitter)
    {
        var axis = emitter.Orientation.Axis;
        var ahead = Side(emitter.Centre.Along(axis, 1));
        var place = Side(emitter.Centre);
        var (level, up) = ((place.FromFront - ahead.FromFront).Meters, (ahead.Up - place.Up).Meters);
        return new FlashBehindPlan(
            light.Flash, light.Modifier, light.Distance, light.OffsetRight, place.FromFront, place.Up,
            Angle.FromRadians(Math.Atan2(up, double.Hypot(level, axis.X))), Angle.FromRadians(Math.Atan2(axis.X, level)));
    }

    /// <summary>The same flash under the sheet as it lies on its back.</summary>
    public FlashBelowPlan OnItsBack(KitSpec kit, LightSpec light, Emitter emitter)
    {
        var (across, along) = (Length.FromMeters(emitter.Centre.X) + (_sheet.Width / 2), Length.FromMeters(emitter.Centre.Y) + (_sheet.Depth / 2));
        return SideView.Flash(kit, light, emitter, Side, (across, _sheet.Width - across, along, _sheet.Depth - along));
    }

    private SidePoint At(Length along) => Side(new Position(0, (along - (_sheet.Depth / 2)).Meters, _sheet.Height.Meters));
}
