using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Panel, flashes, ground, skirts and frame of a kit as the light calculation wants them.</summary>
/// <remarks>
/// Kit and frame count from under the middle of the panel's flat part, the light calculation from half the sheet's length behind its
/// front edge; the two differ by half the swept length.
/// </remarks>
internal static class PanelScene
{
    /// <summary>How far a small battery flash reaches behind its window (common practice, no source).</summary>
    internal static readonly Length FlashBody = Length.FromMillimeters(100);

    // A body thinner than this casts no shadow worth working out.
    private static readonly Length ThinnestBody = Length.FromMillimeters(5);

    /// <summary>The scene of every white-background set-up, before a flash is put there.</summary>
    public static LightScene Unlit(KitSpec kit, PanelPlan panel, FrameResult? frame) => new()
    {
        Panel = Sheet(kit, panel, frame),
        Surround = Surround(kit, kit.Panel.Skirts) with { Frame = frame is null ? [] : Pipes(kit, panel, frame) },
        Emitters = [],
    };

    /// <summary>The flashes of a white-background set-up at full power.</summary>
    public static ValueList<Emitter> Flashes(KitSpec kit, PanelPlan panel, FrameResult? frame, SetUpSpec setUp) =>
        [.. Below(setUp).Select(light => WithBody(EmitterOf(kit, panel, HeightOf(kit, frame), light)))];

    /// <summary>The flashes below.</summary>
    public static IEnumerable<LightSpec> Below(SetUpSpec setUp) => setUp.Lights.Where(light => light.Role == LightRole.Below);

    /// <summary>The sheet.</summary>
    public static LightPanel Sheet(KitSpec kit, PanelPlan panel, FrameResult? frame) => new()
    {
        Width = panel.Width,
        Depth = panel.Depth,
        Height = HeightOf(kit, frame),
        SweepRadius = panel.SweepRadius,
        SweptLength = panel.SweptLength,
        Transmittance = kit.Panel.Transmittance,
        ScatterExponent = kit.Panel.ScatterExponent,
        UndersideReflectance = kit.Panel.UndersideReflectance,
    };

    /// <summary>Ground and skirts.</summary>
    public static LightSurround Surround(KitSpec kit, bool skirts) => new()
    {
        FloorReflectance = kit.Site.GroundReflectance,
        SkirtReflectance = skirts ? kit.Panel.SkirtReflectance : null,
    };

    /// <summary>Middle of the panel's flat part, as the light calculation counts.</summary>
    public static Length FlatMiddle(PanelPlan panel) => -panel.SweptLength / 2;

    /// <summary>The beam of a light.</summary>
    public static LightLobe LobeOf(KitSpec kit, LightSpec light) => LightingCases.Lobe(kit, light);

    /// <summary>Luminous intensity times time on a light's axis at full power [cd·s].</summary>
    public static double FullPowerIntensityTime(FlashCase flash) =>
        FlashExposure.IntensityTime(flash.GuideNumber, FlashPower.Full) * (flash.OutdoorCorrection - flash.ModifierLoss).Ratio;

    private static Length HeightOf(KitSpec kit, FrameResult? frame) => frame?.PanelHeight ?? kit.Frame.Height;

    private static Emitter EmitterOf(KitSpec kit, PanelPlan panel, Length height, LightSpec light)
    {
        var flash = LightingCases.Flash(kit, light);
        var centre = PlaceOf(LowerFlashes.Window(light, height), panel);
        return new Emitter
        {
            Centre = centre,
            Orientation = OrientationOf(panel, height, light, centre),
            Width = flash.HeadWidth,
            Height = flash.HeadHeight,
            Lobe = LobeOf(kit, light),
            AxialIntensityTime = FullPowerIntensityTime(flash),
        };
    }

    private static Orientation OrientationOf(PanelPlan panel, Length height, LightSpec light, Position centre)
    {
        if (light.AimRight is not null || light.AimBack is not null)
        {
            var (right, back) = (light.AimRight ?? Length.Zero, light.AimBack ?? Length.Zero);
            return Orientation.AimedAt(centre, new Position(right.Meters, (FlatMiddle(panel) + back).Meters, height.Meters));
        }

        return light.Tilt.Radians == 0
            ? Orientation.FacingUp
            : Orientation.Tilted(light.Tilt, Angle.FromRadians(Math.Atan2(-light.OffsetBack.Meters, -light.OffsetRight.Meters)));
    }

    private static Emitter WithBody(Emitter emitter)
    {
        var room = Length.FromMeters(emitter.Centre.Z) - Length.FromMillimeters(2);
        var body = room < FlashBody ? room : FlashBody;
        return body < ThinnestBody ? emitter : emitter.WithBody(body);
    }

    // Pieces that run on straight are one pipe to the light: a leg that is only cut elsewhere shades as before.
    private static ValueList<Obstacle> Pipes(KitSpec kit, PanelPlan panel, FrameResult frame)
    {
        var places = frame.Joints.ToDictionary(joint => joint.Label, joint => PlaceOf(joint.Position, panel), StringComparer.Ordinal);
        return [.. StraightRuns.Of(frame.Members.Select(member => (places[member.From], places[member.To])))
            .Select(run => new PipeObstacle(run.Start, run.End, kit.Frame.Pipe.OutsideDiameter))];
    }

    private static Position PlaceOf(FramePoint point, PanelPlan panel) =>
        new(point.Right, point.Back + FlatMiddle(panel).Meters, point.Up);
}
