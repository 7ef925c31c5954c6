using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.SetUps;

/// <summary>What the settings of a set-up must keep within: the camera's range, and what smears no more than passes for sharp.</summary>
internal static class ShotLimits
{
    // Nobody holds still for longer [s].
    private const double LongestSteady = 1;

    /// <summary>Limits where flash is the light.</summary>
    public static SetUpLimits Of(SetUpAtFraming at) => new()
    {
        LowestIso = ThirdStopSeries.FromMark(at.Kit.Camera.LowestIso),
        // A highest speed that is no mark may lie under the exact value of a mark as high.
        HighestIso = new IsoSpeed(Math.Max(
            ThirdStopSeries.FromMark(at.Kit.Camera.HighestIso).Value, ThirdStopSeries.FromMark(at.Kit.Camera.LowestIso).Value)),
        FlashSync = ThirdStopSeries.FromMark(at.Kit.SyncOf(at.SetUp)),
        LongestRecycle = at.Kit.Session.LongestRecycle,
        LongestFlash = Duration.FromSeconds(SteadySeconds(at)),
    };

    /// <summary>Limits where the exposure follows the ambient light: the shutter that the kit gives, else the longest that is steady.</summary>
    public static SetUpLimits InAmbientLight(SetUpAtFraming at) => Of(at) with { LongestShutter = at.SetUp.Shutter ?? SteadyShutter(at) };

    // Smear by subject and hand stays within the blur that passes for sharp; a mark that is nearest might be too long.
    private static ShutterSpeed SteadyShutter(SetUpAtFraming at)
    {
        const double onTheMark = 1.001;
        var speed = SpeedOf(at);
        var longest = speed <= Speed.Zero
            ? LongestSteady
            : Math.Min(LongestSteady, AmbientBlur.LongestShutter(at.Framing.Plan.Magnification, speed, SharpnessPlanner.CircleOf(at.Kit.Camera)).Seconds);
        return ThirdStopSeries.Darker(new ShutterSpeed(longest * onTheMark));
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
        Blur.Combined((at.MainSubject?.Speed ?? Speed.Zero).MetersPerSecond, at.Kit.SwayOf(at.SetUp).MetersPerSecond));
}
