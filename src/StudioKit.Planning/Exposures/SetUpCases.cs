using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Exposures;

/// <summary>A set-up at a framing as the calculations want it.</summary>
internal static class SetUpCases
{
    /// <summary>White background: darkest and brightest visible point come from the light map.</summary>
    public static WhiteBackgroundCase WhiteBackground(SetUpAtFraming at, PanelExtremes extremes) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at),
        Ambient = at.Kit.Site.Ambient,
        Below = LightingCases.Flash(at.Kit, at.SetUp.Lights.First(light => light.Role == LightRole.Below)),
        Lights = OnSubject(at, LightRole.Above, LightRole.Key, LightRole.Fill),
        Transmittance = at.Kit.Panel.Transmittance,
        DarkestPoint = extremes.Darkest,
        BrightestPoint = extremes.Brightest,
        TargetWhiteMargin = at.SetUp.TargetWhiteMargin,
        VeilLimit = at.SetUp.VeilLimit,
        GlareIndex = at.Kit.Camera.VeilingGlare,
        AmbientBelowFlash = at.SetUp.AmbientBelowFlash,
    };

    /// <summary>The flash below at full power, seen by the camera, before fall-off over the panel is known.</summary>
    public static WhiteMarginCase StraightAbove(SetUpAtFraming at) => new()
    {
        Flash = LightingCases.Flash(at.Kit, at.SetUp.Lights.First(light => light.Role == LightRole.Below)),
        Camera = Camera(at),
        Transmittance = at.Kit.Panel.Transmittance,
    };

    /// <summary>Habitat behind, flashes just under the daylight.</summary>
    public static DaylightFillCase DaylightFill(SetUpAtFraming at) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at) with { LongestShutter = SteadyShutter(at) },
        Ambient = at.Kit.Site.Ambient,
        Lights = OnSubject(at, LightRole.Key, LightRole.Above, LightRole.Fill),
        FillLevel = at.SetUp.FillLevel,
    };

    /// <summary>Available light with flash as fill.</summary>
    public static LowLightFillCase LowLightFill(SetUpAtFraming at) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at) with { LongestShutter = at.SetUp.Shutter ?? SteadyShutter(at) },
        Ambient = at.Kit.Site.Ambient,
        Lights = OnSubject(at, LightRole.Fill, LightRole.Key, LightRole.Above),
        FillLevel = at.SetUp.FillLevel,
    };

    /// <summary>Background left black, key and rim light.</summary>
    public static DarkBackgroundCase DarkBackground(SetUpAtFraming at) => new()
    {
        Camera = Camera(at),
        Limits = Limits(at),
        Ambient = at.Kit.Site.Ambient,
        Lights = OnSubject(at, LightRole.Key, LightRole.Above, LightRole.Fill),
        Rims = [.. Of(at, LightRole.Rim).Select(light => new SubjectLight(LightingCases.Flash(at.Kit, light), at.SetUp.RimLevel))],
        BackgroundUnder = at.SetUp.AmbientUnder,
        BackgroundDistance = at.SetUp.BackgroundDistance,
    };

    private static CameraCase Camera(SetUpAtFraming at) => LightingCases.Camera(at.Kit, at.SetUp, at.Framing, at.Aperture);

    // Lights of the leading role share the main level; those of a later role fill at the set-up's fill level.
    private static IReadOnlyList<SubjectLight> OnSubject(SetUpAtFraming at, params LightRole[] roles)
    {
        var lights = roles.SelectMany(role => Of(at, role)).ToList();
        return [.. lights.Select(light => new SubjectLight(
            LightingCases.Flash(at.Kit, light), light.Role == lights[0].Role ? default : at.SetUp.FillLevel))];
    }

    private static IEnumerable<LightSpec> Of(SetUpAtFraming at, LightRole role) => at.SetUp.Lights.Where(light => light.Role == role);

    private static SetUpLimits Limits(SetUpAtFraming at) => new()
    {
        LowestIso = ThirdStopSeries.FromMark(at.Kit.Camera.LowestIso),
        HighestIso = ThirdStopSeries.FromMark(at.Kit.Camera.HighestIso),
        FlashSync = ThirdStopSeries.FromMark(at.Kit.Camera.FlashSync),
        LongestFlash = Duration.FromSeconds(SteadySeconds(at)),
    };

    // A shutter is set in third stops, so the longest that keeps the smear is the click below.
    private static ShutterSpeed SteadyShutter(SetUpAtFraming at)
    {
        var longest = new ShutterSpeed(Math.Clamp(SteadySeconds(at), 1.0 / 8000, 1));
        var nearest = ThirdStopSeries.Nearest(longest);
        return nearest.Seconds > longest.Seconds * 1.05 ? ThirdStopSeries.Darker(nearest) : nearest;
    }

    // Smear by subject and hand stays within the blur that passes for sharp.
    private static double SteadySeconds(SetUpAtFraming at)
    {
        var camera = at.Kit.Camera;
        var blur = camera.CircleOfConfusion?.Meters ?? CircleOfConfusion.FromDiagonal(camera.SensorWidth.Meters, camera.SensorHeight.Meters);
        var speed = Blur.Combined((at.MainSubject?.Speed ?? Speed.Zero).MetersPerSecond, at.Kit.Site.HandSpeed.MetersPerSecond);
        return speed <= 0 ? 1 : Math.Min(1, MotionBlur.LongestTime(at.Framing.Plan.Magnification.Value, speed, blur, 1));
    }
}
