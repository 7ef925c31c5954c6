using StudioKit.Kits.Description;

namespace StudioKit.Kits.Session;

/// <summary>Keys of the session and of the place it is held at.</summary>
internal static class SessionSections
{
    public static readonly Section<SessionSpec> Session = new Section<SessionSpec>("session", "How long the steps of a session take.", new())
        .Optional("setting-up", "Unpacking to the first set-up ready for its test.", "0 s", "4 h")
            .Duration((session, value) => session with { SettingUp = value }, session => session.SettingUp)
        .Optional("changing", "Changing from one set-up to another.", "0 s", "2 h")
            .Duration((session, value) => session with { Changing = value }, session => session.Changing)
        .Optional("reframing", "Changing lens or magnification within a set-up.", "0 s", "1 h")
            .Duration((session, value) => session with { Reframing = value }, session => session.Reframing)
        .Optional("settling", "Catching or fetching an animal until it sits on the sheet.", "0 s", "1 h")
            .Duration((session, value) => session with { Settling = value }, session => session.Settling)
        .Optional("frame-time", "Shortest time from one frame to the next: look, focus, fire.", "0.1 s", "10 min")
            .Duration((session, value) => session with { FrameTime = value }, session => session.FrameTime)
        .Optional("longest-recycle", "Longest that a flash may take to recharge between frames; else as long as its power takes.", "0.1 s", "60 s")
            .Duration((session, value) => session with { LongestRecycle = value })
        .Optional("test-frames", "Frames of the test object at each framing of a set-up.", "1", "100")
            .Count((session, value) => session with { TestFrames = value }, session => session.TestFrames)
        .Optional("frames", "Frames of a subject in each set-up.", "1", "1000")
            .Count((session, value) => session with { Frames = value }, session => session.Frames)
        .Optional("rounds", "How often in a day the session is gone through with new animals.", "1", "100")
            .Count((session, value) => session with { Rounds = value }, session => session.Rounds);

    public static readonly Section<SiteSpec> Site = new Section<SiteSpec>("site", "Light, wind and ground of the place.", new())
        .Optional("name", "Name of the place.").Name((site, value) => site with { Name = value }, site => site.Name)
        .Optional("ambient", "Ambient light on the subject, e.g. 'EV 12' or '10000 lx'.", "EV -6", "EV 18")
            .ExposureValue((site, value) => site with { Ambient = value }, site => site.Ambient)
        .Optional("wind", "Mean wind at its strongest, e.g. 'Beaufort 4' (its upper bound) or '6 m/s'.", "0 m/s", "40 m/s")
            .Wind((site, value) => site with { Wind = value }, site => site.Wind)
        .Optional("gust-factor", "Gust over mean wind; 1 where the wind given is the gust.", "1", "3")
            .Plain((site, value) => site with { GustFactor = value }, site => site.GustFactor)
        .Optional("slope", "Slope of the ground.", "0°", "45°").Angle((site, value) => site with { Slope = value }, site => site.Slope)
        .Optional("ground-reflectance", "Diffuse reflectance of the ground under the panel.", "0", "1")
            .Ratio((site, value) => site with { GroundReflectance = value }, site => site.GroundReflectance)
        .Optional("ground-friction", "Friction between feet and ground: the pull that drags the studio, over its weight.", "0.05", "2")
            .Plain((site, value) => site with { GroundFriction = value }, site => site.GroundFriction)
        .Optional("temperature", "Air temperature of a warm day.", "-40 °C", "60 °C")
            .Temperature((site, value) => site with { Temperature = value }, site => site.Temperature)
        .Optional("sun-warming", "How much warmer than the air the sun makes sheet and pipes, e.g. '10 K'.", "0 K", "50 K")
            .TemperatureDifference((site, value) => site with { SunWarming = value }, site => site.SunWarming)
        .Optional("hand-speed", "Speed at which a hand-held camera sways against the subject.", "0 m/s", "1 m/s")
            .Speed((site, value) => site with { HandSpeed = value }, site => site.HandSpeed)
        .Optional("outdoor-correction", "What guide numbers lose outdoors, where no walls help; negative stops.", "-3", "1")
            .Stops((site, value) => site with { OutdoorCorrection = value }, site => site.OutdoorCorrection);
}
