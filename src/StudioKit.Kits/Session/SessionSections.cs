using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Kits.Session;

/// <summary>Keys of the session and of the place it is held at.</summary>
internal static class SessionSections
{
    public static readonly Section<SessionSpec> Session = new Section<SessionSpec>("session", "How long the steps of a session take.", new())
        .Optional("setting-up", Kinds.Duration, "Unpacking to the first set-up ready for its test.",
            (session, value) => session with { SettingUp = (Duration)value! }, session => session.SettingUp, "0 s", "4 h")
        .Optional("changing", Kinds.Duration, "Changing from one set-up to another.", (session, value) => session with { Changing = (Duration)value! }, session => session.Changing, "0 s", "2 h")
        .Optional("reframing", Kinds.Duration, "Changing lens or magnification within a set-up.",
            (session, value) => session with { Reframing = (Duration)value! }, session => session.Reframing, "0 s", "1 h")
        .Optional("settling", Kinds.Duration, "Catching or fetching an animal until it sits on the sheet.",
            (session, value) => session with { Settling = (Duration)value! }, session => session.Settling, "0 s", "1 h")
        .Optional("frame-time", Kinds.Duration, "Shortest time from one frame to the next: look, focus, fire.",
            (session, value) => session with { FrameTime = (Duration)value! }, session => session.FrameTime, "0.1 s", "10 min")
        .Free("longest-recycle", Kinds.Duration, "Longest that a flash may take to recharge between frames; else as long as its power takes.",
            (session, value) => session with { LongestRecycle = (Duration)value! }, "0.1 s", "60 s")
        .Optional("test-frames", Kinds.Count, "Frames of the test object at each framing of a set-up.",
            (session, value) => session with { TestFrames = (int)value! }, session => session.TestFrames, "1", "100")
        .Optional("frames", Kinds.Count, "Frames of a subject in each set-up.", (session, value) => session with { Frames = (int)value! }, session => session.Frames, "1", "1000")
        .Optional("rounds", Kinds.Count, "How often in a day the session is gone through with new animals.",
            (session, value) => session with { Rounds = (int)value! }, session => session.Rounds, "1", "100");

    public static readonly Section<SiteSpec> Site = new Section<SiteSpec>("site", "Light, wind and ground of the place.", new())
        .Optional("name", Kinds.Name, "Name of the place.", (site, value) => site with { Name = (string)value! }, site => site.Name)
        .Optional("ambient", Kinds.ExposureValue, "Ambient light on the subject, e.g. 'EV 12' or '10000 lx'.",
            (site, value) => site with { Ambient = (ExposureValue)value! }, site => site.Ambient, "EV -6", "EV 18")
        .Optional("wind", Kinds.Wind, "Wind at its strongest, e.g. 'Beaufort 4' (its upper bound) or '6 m/s'.",
            (site, value) => site with { Wind = (Speed)value! }, site => site.Wind, "0 m/s", "40 m/s")
        .Optional("slope", Kinds.Angle, "Slope of the ground.", (site, value) => site with { Slope = (Angle)value! }, site => site.Slope, "0°", "45°")
        .Optional("ground-reflectance", Kinds.Ratio, "Diffuse reflectance of the ground under the panel.",
            (site, value) => site with { GroundReflectance = (double)value! }, site => site.GroundReflectance, "0", "1")
        .Optional("ground-friction", Kinds.Plain, "Friction between feet and ground: the pull that drags the studio, over its weight.",
            (site, value) => site with { GroundFriction = (double)value! }, site => site.GroundFriction, "0.05", "2")
        .Optional("temperature", Kinds.Temperature, "Air temperature of a warm day.",
            (site, value) => site with { Temperature = (Temperature)value! }, site => site.Temperature, "-40 °C", "60 °C")
        .Optional("sun-warming", Kinds.TemperatureDifference, "How much warmer than the air the sun makes sheet and pipes, e.g. '10 K'.",
            (site, value) => site with { SunWarming = (TemperatureDelta)value! }, site => site.SunWarming, "0 K", "50 K")
        .Optional("hand-speed", Kinds.Speed, "Speed at which a hand-held camera sways against the subject.",
            (site, value) => site with { HandSpeed = (Speed)value! }, site => site.HandSpeed, "0 m/s", "1 m/s")
        .Optional("outdoor-correction", Kinds.Stops, "What guide numbers lose outdoors, where no walls help; negative stops.",
            (site, value) => site with { OutdoorCorrection = (Stops)value! }, site => site.OutdoorCorrection, "-3", "1");
}
