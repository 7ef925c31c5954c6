using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Exposures;

/// <summary>A set-up at a framing as the calculations want it.</summary>
internal static class SetUpCases
{
    // Nobody holds still for longer [s].
    private const double LongestSteady = 1;

    // Every lens has some veil: none at all cannot be asked for, and nobody sees less than this.
    private const double LeastVeil = 0.01;

    /// <summary>White background: darkest and brightest visible point come from the light map.</summary>
    public static WhiteBackgroundCase WhiteBackground(SetUpAtFraming at, PanelExtremes extremes) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at),
        Ambient = at.Ambient,
        Below = Flash(at, BelowOf(at)),
        Lights = OnSubject(at, OrderOf(SetUpKind.WhiteBackground)),
        Transmittance = at.Kit.Panel.Transmittance,
        DarkestPoint = extremes.Darkest,
        BrightestPoint = extremes.Brightest,
        TargetWhiteMargin = at.SetUp.TargetWhiteMargin,
        VeilLimit = new Stops(Math.Max(LeastVeil, at.SetUp.VeilLimit.Value)),
        GlareIndex = at.Kit.Camera.VeilingGlare,
        AmbientBelowFlash = at.SetUp.AmbientBelowFlash,
    };

    /// <summary>The lights of a set-up in the order in which a solution gives them; what its way of lighting has no use for is left out.</summary>
    public static IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp)
    {
        var onSubject = OrderOf(setUp.Kind).SelectMany(role => setUp.Lights.Where(light => light.Role == role));
        return setUp.Kind switch
        {
            SetUpKind.WhiteBackground => [setUp.Lights.First(light => light.Role == LightRole.Below), .. onSubject],
            SetUpKind.DarkBackground => [.. onSubject, .. setUp.Lights.Where(light => light.Role == LightRole.Rim)],
            _ => [.. onSubject],
        };
    }

    /// <summary>The flash below at full power, seen by the camera, before fall-off over the panel is known.</summary>
    public static WhiteMarginCase StraightAbove(SetUpAtFraming at) => new()
    {
        Flash = Flash(at, BelowOf(at)),
        Camera = Camera(at),
        Transmittance = at.Kit.Panel.Transmittance,
    };

    /// <summary>Habitat behind, flashes just under the daylight.</summary>
    public static DaylightFillCase DaylightFill(SetUpAtFraming at) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at) with { LongestShutter = at.SetUp.Shutter ?? SteadyShutter(at) },
        Ambient = at.Ambient,
        Lights = OnSubject(at, OrderOf(at.SetUp.Kind)),
        FillLevel = at.SetUp.FillLevel,
        FavouriteIso = at.SetUp.Iso,
    };

    /// <summary>Available light with flash as fill.</summary>
    public static LowLightFillCase LowLightFill(SetUpAtFraming at) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at) with { LongestShutter = at.SetUp.Shutter ?? SteadyShutter(at) },
        Ambient = at.Ambient,
        Lights = OnSubject(at, OrderOf(at.SetUp.Kind)),
        FillLevel = at.SetUp.FillLevel,
        FavouriteIso = at.SetUp.Iso,
    };

    /// <summary>Background left black, key and rim light.</summary>
    public static DarkBackgroundCase DarkBackground(SetUpAtFraming at) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at),
        Ambient = at.Ambient,
        Lights = OnSubject(at, OrderOf(at.SetUp.Kind)),
        Rims = [.. Of(at, LightRole.Rim).Select(light => new SubjectLight(Flash(at, light), at.SetUp.RimLevel))],
        BackgroundUnder = at.SetUp.AmbientUnder,
        BackgroundDistance = at.SetUp.BackgroundDistance,
    };

    // The leading role first: what it gives is the main light.
    private static LightRole[] OrderOf(SetUpKind kind) => kind switch
    {
        SetUpKind.WhiteBackground => [LightRole.Above, LightRole.Key, LightRole.Fill],
        SetUpKind.LowLightFill => [LightRole.Fill, LightRole.Key, LightRole.Above],
        _ => [LightRole.Key, LightRole.Above, LightRole.Fill],
    };

    private static CameraCase Camera(SetUpAtFraming at) => LightingCases.Camera(at.Kit, at.SetUp, at.Framing, at.Aperture);

    // Lights of the leading role share the main level; those of a later role fill at the set-up's fill level.
    private static IReadOnlyList<SubjectLight> OnSubject(SetUpAtFraming at, params LightRole[] roles)
    {
        var lights = roles.SelectMany(role => Of(at, role)).ToList();
        return [.. lights.Select(light => new SubjectLight(
            Flash(at, light), light.Role == lights[0].Role ? default : at.SetUp.FillLevel))];
    }

    /// <summary>One flash of the set-up, with how well its numbers are known.</summary>
    public static FlashCase Flash(SetUpAtFraming at, LightSpec light) =>
        LightingCases.Flash(at.Kit, light) with { Uncertainty = at.Known.Of(at.SetUp, light) };

    private static LightSpec BelowOf(SetUpAtFraming at) => Of(at, LightRole.Below).First();

    private static IEnumerable<LightSpec> Of(SetUpAtFraming at, LightRole role) => at.SetUp.Lights.Where(light => light.Role == role);

    private static SetUpLimits Limits(SetUpAtFraming at) => new()
    {
        LowestIso = ThirdStopSeries.FromMark(at.Kit.Camera.LowestIso),
        // A highest speed that is no mark may lie under the exact value of a mark as high.
        HighestIso = new IsoSpeed(Math.Max(
            ThirdStopSeries.FromMark(at.Kit.Camera.HighestIso).Value, ThirdStopSeries.FromMark(at.Kit.Camera.LowestIso).Value)),
        FlashSync = ThirdStopSeries.FromMark(at.Kit.Camera.FlashSync),
        LongestFlash = Duration.FromSeconds(SteadySeconds(at)),
    };

    // Smear by subject and hand stays within the blur that passes for sharp.
    private static ShutterSpeed SteadyShutter(SetUpAtFraming at)
    {
        var speed = SpeedOf(at);
        return speed <= Speed.Zero
            ? new ShutterSpeed(LongestSteady)
            : new ShutterSpeed(Math.Min(
                LongestSteady, AmbientBlur.LongestShutter(at.Framing.Plan.Magnification, speed, SharpnessPlanner.CircleOf(at.Kit.Camera)).Seconds));
    }

    private static double SteadySeconds(SetUpAtFraming at)
    {
        var speed = SpeedOf(at);
        return speed <= Speed.Zero
            ? LongestSteady
            : Math.Min(LongestSteady, MotionBlur.LongestTime(
                at.Framing.Plan.Magnification.Value, speed.MetersPerSecond, SharpnessPlanner.CircleOf(at.Kit.Camera).Meters, 1));
    }

    private static Speed SpeedOf(SetUpAtFraming at) => Speed.FromMetersPerSecond(
        Blur.Combined((at.MainSubject?.Speed ?? Speed.Zero).MetersPerSecond, at.Kit.Site.HandSpeed.MetersPerSecond));
}
