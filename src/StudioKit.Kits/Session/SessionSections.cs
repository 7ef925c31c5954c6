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
        .Optional("date", "Date that the day is planned for, by the sun of the place; else the sun is left out.", "1901-01-01", "2100-12-31")
            .Date((site, value) => site with { Date = value })
        .Optional("latitude", "Latitude, e.g. '52.3° N', or negative in the south.", "-90°", "90°").Latitude((site, value) => site with { Latitude = value })
        .Optional("longitude", "Longitude, e.g. '5.1° E', or negative in the west.", "-180°", "180°").Longitude((site, value) => site with { Longitude = value })
        .Optional("utc-offset", "How far the clocks are ahead of Universal Time on that date, summer time counted; else the whole hours of the longitude.", "-12 h", "+14 h")
            .ClockOffset((site, value) => site with { UtcOffset = value }, site => site.ClockOffset)
        .Optional("shade-loss", "How much darker the shade used there is than open shade under a clear sky: an umbrella's or that of trees; for the light expected in the day.", "0", "8")
            .Stops((site, value) => site with { ShadeLoss = value }, site => site.ShadeLoss)
        .Optional("ambient", "Ambient light on the subject, e.g. 'EV 12', '10000 lx', or a place of the published table such as 'open shade'.", "EV -6", "EV 18")
            .ExposureValue((site, value) => site with { Ambient = value }, site => site.Ambient)
        .Optional("wind", "Mean wind at its strongest, e.g. 'Beaufort 4' (its upper bound) or '6 m/s'.", "0 m/s", "40 m/s")
            .Wind((site, value) => site with { Wind = value }, site => site.Wind)
        .Optional("gust-factor", "Gust over mean wind; 1 where the wind given is the gust.", "1", "3")
            .Plain((site, value) => site with { GustFactor = value }, site => site.GustFactor)
        .Optional("slope", "Slope of the ground.", "0°", "45°").Angle((site, value) => site with { Slope = value }, site => site.Slope)
        .Optional("downhill", "Which way the ground falls, as the camera looks: away, right, towards or left, or an angle from away towards the right, e.g. '30°'; each foot is then set for it, else by a level.", "-180°", "360°")
            .Downhill((site, value) => site with { Downhill = value })
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
            .Stops((site, value) => site with { OutdoorCorrection = value }, site => site.OutdoorCorrection)
        .Follows("utc-offset", site => site.Date is null)
        .Follows("shade-loss", site => site.Date is null)
        .Check(HalfAPlace)
        .Check(OddClock);

    // Clocks in use are up to three hours and some off the sun, summer time counted; more is a sign forgotten. Across the date line they are a whole day off, which is none.
    private static Fault? OddClock(SiteSpec site)
    {
        if (site is not { UtcOffset: { } offset, Longitude: { } longitude })
        {
            return null;
        }

        var off = Math.IEEERemainder(offset.Hours - (longitude.Degrees / 15), 24);
        return Math.Abs(off) <= 3.6 ? null : new Fault(
            "utc-offset", FormattableString.Invariant($"At this longitude the clock is {Math.Abs(off):0.#} hours {(off > 0 ? "ahead of" : "behind")} the sun."),
            "East is positive, as is a clock ahead of Universal Time: write for example 'longitude: 105.2° W' with 'utc-offset: -7 h'.", IsWarning: true);
    }

    private static Fault? HalfAPlace(SiteSpec site) => site switch
    {
        { Latitude: { }, Longitude: null } => new Fault("latitude", "The site has a latitude and no longitude.", "Give both, e.g. 'longitude: 5.1° E'."),
        { Latitude: null, Longitude: { } } => new Fault("longitude", "The site has a longitude and no latitude.", "Give both, e.g. 'latitude: 52.3° N'."),
        { Date: { }, Latitude: null } => new Fault("date", "The site has a date, but no place to look for the sun.", "Give 'latitude' and 'longitude' too, e.g. 'latitude: 52.3° N' and 'longitude: 5.1° E'."),
        _ => null,
    };
}
