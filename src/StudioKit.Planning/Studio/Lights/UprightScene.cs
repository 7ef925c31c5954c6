using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Light;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Uprights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>An upright sheet, the flashes behind it and the ground under it, as the light calculation wants them: lying on its back.</summary>
internal static class UprightScene
{
    // Ground nearer than this behind the sheet sends light back that is worth counting; in whole such lengths, so that a flash that is moved a little stands in the box that it stood in.
    private static readonly Length LeastDepth = Length.FromMillimeters(500);

    /// <summary>The scene of one set-up, its flashes at full power.</summary>
    public static LightScene Of(KitSpec kit, UprightSpec upright, UprightPlan plan, SetUpSpec setUp)
    {
        var flashes = setUp.LightsOf(LightRole.Behind).ToList();
        var depth = LeastDepth * Math.Max(1, Math.Ceiling((flashes.Select(light => light.Distance).DefaultIfEmpty(Length.Zero).Max() + (PanelScene.FlashBody * 2)) / LeastDepth));
        return new LightScene
        {
            Panel = new LightPanel
            {
                Width = plan.Width,
                Depth = plan.Height,
                Height = depth,
                Transmittance = upright.Sheet.Transmittance,
                ScatterExponent = upright.Sheet.ScatterExponent,
                UndersideReflectance = upright.Sheet.UndersideReflectance,
            },
            Surround = new LightSurround
            {
                FloorReflectance = 0,
                OpenFloorMargin = Length.Zero,
                Ground = setUp.IsBeforeUpright ? GroundOf(kit, upright, depth) : null,
            },
            Emitters = [.. flashes.Select(light => EmitterOf(kit, upright, plan, setUp, light, depth))],
        };
    }

    /// <summary>Where the flashes are aimed: the point of the sheet level with the middle of the tallest subject, from its lower edge.</summary>
    public static Length Aim(KitSpec kit, UprightSpec upright, SetUpSpec setUp) => UprightPlacing.LevelWith(
        upright, setUp, kit.SubjectsOf(setUp).Select(subject => SharpnessPlanner.HeightOf(subject) / 2).DefaultIfEmpty(Length.Zero).Max());

    // As far to both sides as behind: what lies further off sends next to nothing.
    private static GroundBeside GroundOf(KitSpec kit, UprightSpec upright, Length depth) => new()
    {
        Reflectance = kit.Site.GroundReflectance,
        Under = upright.OverGround / Math.Cos(upright.Lean.Radians),
        Lean = upright.Lean,
        Beyond = depth,
    };

    private static Emitter EmitterOf(KitSpec kit, UprightSpec upright, UprightPlan plan, SetUpSpec setUp, LightSpec light, Length depth)
    {
        var flash = LightingCases.Flash(kit, light);
        var aim = (Aim(kit, upright, setUp) - (plan.Height / 2)).Meters;
        var centre = new Position(light.OffsetRight.Meters, aim + light.OffsetUp.Meters, (depth - light.Distance).Meters);
        return new Emitter
        {
            Centre = centre,
            Orientation = Orientation.AimedAt(centre, new Position(0, aim, depth.Meters)),
            Width = flash.HeadWidth,
            Height = flash.HeadHeight,
            Lobe = PanelScene.LobeOf(kit, light),
            AxialIntensityTime = PanelScene.FullPowerIntensityTime(flash),
        }.WithBody(PanelScene.FlashBody);
    }
}
