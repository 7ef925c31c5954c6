using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning.Exposures;
using UnitsNet;

namespace StudioKit.Planning.Panels;

/// <summary>Light on the panel for each white-background set-up, worked out once and looked at by every framing.</summary>
internal sealed class PanelLight(KitSpec kit, PanelPlan panel)
{
    private static readonly PanelGrid Grid = new(24, 24);

    private readonly Dictionary<string, LightMap?> _maps = new(StringComparer.Ordinal);

    /// <summary>What is impossible about the studio's geometry, a sentence each; such a set-up is planned without a light map.</summary>
    public IReadOnlyList<string> Problems { get; } =
        [.. kit.SetUps
            .Where(setUp => setUp.Kind == SetUpKind.WhiteBackground)
            .SelectMany(setUp => SceneCheck.Problems(SceneOf(kit, panel, setUp)).Select(problem => $"{setUp.Name}: {problem.Sentence}"))];

    /// <summary>The light map of a set-up at full power; none where its geometry is impossible.</summary>
    public LightMap? MapOf(SetUpSpec setUp)
    {
        if (!_maps.TryGetValue(setUp.Name, out var map))
        {
            var scene = SceneOf(kit, panel, setUp);
            map = SceneCheck.Problems(scene).Count > 0 ? null : LightSolver.Solve(scene, Grid);
            _maps.Add(setUp.Name, map);
        }

        return map;
    }

    /// <summary>Darkest and brightest visible point over all camera pitches of a framing.</summary>
    public PanelExtremes Extremes(SetUpAtFraming at)
    {
        if (MapOf(at.SetUp) is not { } map)
        {
            return new PanelExtremes(default, default);
        }

        var straightAbove = WhiteMargin.Level(SetUpCases.StraightAbove(at));
        var seen = at.SetUp.CameraPitches
            .Select(pitch => Seen(map, at, pitch))
            .Where(margins => margins.Darkest is not null)
            .ToList();
        return seen.Count == 0
            ? new PanelExtremes(default, default)
            : new PanelExtremes(
                new Stops(seen.Min(margins => margins.Darkest!.Margin.Value) - straightAbove.Value),
                new Stops(seen.Max(margins => margins.Brightest!.Margin.Value) - straightAbove.Value));
    }

    /// <summary>Margins over the frame of one framing at one pitch, flashes below at full power.</summary>
    public WhiteMarginMap Seen(LightMap map, SetUpAtFraming at, Angle pitch)
    {
        var view = new PanelSight(kit, at.SetUp, at.Framing, pitch).ViewAt(panel.SubjectFromFront - (panel.Depth / 2));
        return WhiteMarginMap.Of(map, view, LightingCases.Camera(kit, at.SetUp, at.Framing, at.Aperture));
    }

    private static LightScene SceneOf(KitSpec kit, PanelPlan panel, SetUpSpec setUp) => new()
    {
        Panel = new LightPanel
        {
            Width = panel.Width,
            Depth = panel.Depth,
            Height = kit.Frame.Height,
            SweepRadius = panel.SweepRadius,
            SweptLength = panel.SweptLength,
            Transmittance = kit.Panel.Transmittance,
            ScatterExponent = kit.Panel.ScatterExponent,
            UndersideReflectance = kit.Panel.UndersideReflectance,
        },
        Surround = new LightSurround
        {
            FloorReflectance = kit.Site.GroundReflectance,
            SkirtReflectance = kit.Panel.Skirts ? kit.Panel.SkirtReflectance : null,
        },
        Emitters = [.. setUp.Lights.Where(light => light.Role == LightRole.Below).Select(light => EmitterOf(kit, light))],
    };

    private static Emitter EmitterOf(KitSpec kit, LightSpec light)
    {
        var flash = LightingCases.Flash(kit, light);
        var lobe = LightingCases.Lobe(kit, light);
        return new Emitter
        {
            Centre = new Position(light.OffsetRight.Meters, light.OffsetBack.Meters, (kit.Frame.Height - light.Distance).Meters),
            Orientation = light.Tilt.Radians == 0
                ? Orientation.FacingUp
                : Orientation.Tilted(light.Tilt, Angle.FromRadians(Math.Atan2(-light.OffsetBack.Meters, -light.OffsetRight.Meters))),
            Width = flash.HeadWidth,
            Height = flash.HeadHeight,
            Lobe = new CosineLobe(lobe.ExponentAcross, lobe.ExponentUp),
            AxialIntensityTime = FlashExposure.IntensityTime(flash.GuideNumber, FlashPower.Full)
                * (flash.OutdoorCorrection - flash.ModifierLoss).Ratio,
        };
    }
}
