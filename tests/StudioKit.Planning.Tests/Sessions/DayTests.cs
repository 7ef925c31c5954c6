using System.Globalization;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Session;
using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Mending;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning.Tests.Sessions;

/// <summary>The day by date and place: rounds fall into its light, its hours, and the time when subjects are about.</summary>
public sealed class DayTests
{
    // 52.3° N, 5.1° E on 14 June: sunrise 05:18, highest sun 13:40, sunset 22:02 by a clock at UTC+2 (half an hour on either side of the days below is far from them).
    private const string Fen = """
        kit: Fen
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400}
        lenses:
          - {name: reed 60, focal-length: 60 mm, aperture: f/2.8 to f/22, largest-magnification: 1:1, magnifications: [1:2]}
        flashes:
          - {name: willow, guide-number: "38 m @ ISO 100, 35 mm", recycle-time: 3.5 s, flashes-per-set: 140, spare-sets: 5}
        site: {ground-reflectance: 0SITE}
        subjects:
          - {name: moth, group: flying-insects, length: 30 mm, speed: 0 m/sMOTH}
          - {name: newt, group: amphibians, length: 40 mm, hold-limit: 5 min, speed: 0 m/sNEWT}
        set-ups:
          - name: black
            kind: dark-background
            aperture: f/16
            iso: 400
            ambient: EV 8
            light-window: WINDOW
            background-distance: 3 mCLOCK
            lights: [{flash: willow, role: key, distance: 40 cm}]
        session: {setting-up: 10 min, changing: 3 min, settling: 1 min, frame-time: 6 s, test-frames: 2, frames: 10, rounds: ROUNDS}

        """;

    private const string June = ", date: 2026-06-14, latitude: 52.3°, longitude: 5.1°, utc-offset: +2 h";

    [Fact]
    public void Without_a_date_no_sun_is_looked_at()
    {
        var plan = Planned();

        plan.Day.Should().BeNull();
        plan.Session!.Blocks.Should().OnlyContain(block => block.Hours == null);
        plan.Cautions.Should().NotContain(caution => caution.Kind == CautionKind.Sun);
    }

    // Sunrise and sunset by an independent route: cos H = -tan φ·tan δ at the horizon's -0.833°, with the declination of the almanac for mid-June, 23.3°, and the equation of time 0.
    [Fact]
    public void Sunrise_noon_and_sunset_stand_where_spherical_astronomy_has_them()
    {
        var day = Planned(site: June).Day!;
        var (latitude, declination, horizon) = (52.3 * Math.PI / 180, 23.27 * Math.PI / 180, -0.8333 * Math.PI / 180);
        var half = Math.Acos((Math.Sin(horizon) - (Math.Sin(latitude) * Math.Sin(declination))) / (Math.Cos(latitude) * Math.Cos(declination))) * 720 / Math.PI;
        var noon = 720 - (4 * 5.1) + 120;

        Minute(day, SunEventKind.TrueNoon).Should().BeCloseTo((int)noon, 2);
        Minute(day, SunEventKind.Sunrise).Should().BeCloseTo((int)Math.Round(noon - half), 2);
        Minute(day, SunEventKind.Sunset).Should().BeCloseTo((int)Math.Round(noon + half), 2);
        day.Events.Select(of => of.Minute).Should().BeInAscendingOrder();
        day.Events.Single(of => of.Kind == SunEventKind.TrueNoon).Height.Degrees.Should().BeApproximately(90 - 52.3 + 23.27, 0.1);
    }

    [Fact]
    public void Shade_falls_away_from_the_sun_and_is_longest_when_the_sun_is_low()
    {
        var hours = Planned(site: June).Day!.Hours.Where(hour => hour.ShadowOverHeight is not null).ToList();

        hours.Should().HaveCountGreaterThan(14).And.OnlyContain(hour => Math.Abs(Math.Abs(hour.Azimuth.Degrees - hour.ShadowDirection.Degrees) - 180) < 1e-9);
        hours.Should().OnlyContain(hour => Math.Abs((hour.ShadowOverHeight!.Value * Math.Tan(hour.Height.Radians)) - 1) < 1e-9);
        hours.MinBy(hour => hour.ShadowOverHeight)!.Minute.Should().Be(14 * 60, "the highest sun is nearest to two o'clock");
        hours.Where(hour => hour.Minute < 13 * 60).Should().OnlyContain(hour => hour.Azimuth.Degrees < 180 && hour.ShadowDirection.Degrees > 180, "in the morning the sun is in the east");
    }

    // In June full sun is over EV 13 all day but for its ends; the light of the window is there twice, in the morning and in the evening.
    [Fact]
    public void Rounds_fall_into_the_light_of_their_set_up()
    {
        var plan = Planned(site: June, window: "EV 7 to EV 10");
        var hours = plan.Session!.Blocks.Single().Hours!;

        plan.Checks.Single(check => check.Kind == PlanCheckKind.DayTime).Passed.Should().BeTrue();
        hours.Times.Where(time => time.Sky == SkyState.Sun).Should().HaveCount(2).And.OnlyContain(time => time.To < 8 * 60 || time.From > 20 * 60);
        foreach (var time in hours.Times)
        {
            foreach (var minute in new[] { time.From, (time.From + time.To) / 2, time.To })
            {
                Light(minute, time.Sky!.Value).Should().BeInRange(7 - 1e-9, 10 + 1e-9);
            }
        }

        hours.EarliestBegin.Should().Be(hours.Chosen!.From);
        (hours.LatestBegin + Math.Ceiling(plan.Session.Blocks[0].Time.Minutes)).Should().BeLessThanOrEqualTo(hours.Chosen.To);
    }

    // EV 17 is brighter than any sun: 120 klx, the most at the zenith, are EV 15.6.
    [Fact]
    public void Light_that_the_sun_never_gives_fails_the_day_and_the_remedy_names_the_light_there_is()
    {
        var check = Planned(site: June, window: "EV 8 to EV 8.0001").Checks.Single(check => check.Kind == PlanCheckKind.DayTime);

        check.Passed.Should().BeFalse();
        check.Remedy!.Kind.Should().Be(CheckRemedyKind.OtherLight);
        var light = check.Remedy.Amount.Should().BeOfType<CheckAmount.Brightness>().Which.Range!;
        light.Brightest.AtIso100.Should().BeInRange(15, 15.6);
    }

    [Fact]
    public void Hours_that_miss_the_light_are_answered_with_hours_that_have_it()
    {
        var check = Planned(site: June, window: "EV 7 to EV 10", clock: "12:00 to 15:00").Checks.Single(check => check.Kind == PlanCheckKind.DayTime);

        check.Remedy!.Kind.Should().Be(CheckRemedyKind.OtherHours);
        var offered = check.Remedy.Amount.Should().BeOfType<CheckAmount.Times>().Which.List[0];
        Planned(site: June, window: "EV 7 to EV 10", clock: $"{Clock(offered.From)} to {Clock(offered.To)}").Checks.Single(found => found.Kind == PlanCheckKind.DayTime).Passed.Should().BeTrue();
    }

    [Fact]
    public void More_rounds_than_the_light_lasts_for_are_answered_with_as_many_as_fit()
    {
        var plan = Planned(site: June, window: "EV 7 to EV 10", rounds: 40);
        var check = plan.Checks.Single(check => check.Kind == PlanCheckKind.DayTime);

        check.Remedy!.Kind.Should().Be(CheckRemedyKind.FewerRounds);
        var fitting = ((CheckAmount.HowMany)check.Remedy.Amount).Value;
        Planned(site: June, window: "EV 7 to EV 10", rounds: fitting).Checks.Single(found => found.Kind == PlanCheckKind.DayTime).Passed.Should().BeTrue();
        Planned(site: June, window: "EV 7 to EV 10", rounds: fitting + 1).Checks.Single(found => found.Kind == PlanCheckKind.DayTime).Passed.Should().BeFalse();
        MendCandidates.For(check, plan).Should().NotBeEmpty();
    }

    [Fact]
    public void Subjects_that_are_about_at_other_hours_have_a_block_of_their_own()
    {
        var session = Planned(site: June, window: "EV -6 to EV 18", moth: "night", newt: "day").Session!;

        session.Blocks.Select(block => block.Only.Single()).Should().Equal("newt", "moth");
        session.Blocks.SelectMany(block => block.First.Steps).Where(step => step.Kind == SessionStepKind.Shooting).Select(step => step.Subject).Should().Equal("newt", "moth");
        session.Blocks[1].Hours!.EarliestBegin.Should().BeGreaterThan(22 * 60);
        session.Subjects.Should().HaveCount(2);
    }

    [Fact]
    public void Subjects_that_are_about_together_share_a_block()
    {
        var session = Planned(site: June, window: "EV -6 to EV 18", moth: "day", newt: "06:00 to 12:00").Session!;

        session.Blocks.Should().ContainSingle().Which.Only.Should().BeEmpty();
        session.Blocks[0].Hours!.Times.Should().OnlyContain(time => time.From >= 360 && time.To <= 720);
    }

    // Everywhere between the polar circles and on every day dusk follows sunset and dawn goes before sunrise; both end where the sun is 12° under the horizon.
    [Theory]
    [InlineData("52.3°", "2026-06-14")]
    [InlineData("-33.9°", "2026-06-14")]
    [InlineData("-33.9°", "2026-12-14")]
    [InlineData("1°", "2026-03-20")]
    public void Dusk_follows_the_sunset_and_dawn_goes_before_the_sunrise(string latitude, string date)
    {
        var site = $", date: {date}, latitude: {latitude}, longitude: 0°, utc-offset: 0 h";
        var (dusk, dawn) = (Planned(site: site, window: "EV -6 to EV 18", moth: "dusk", newt: "dusk"), Planned(site: site, window: "EV -6 to EV 18", moth: "dawn", newt: "dawn"));

        Times(dusk).Select(time => time.From).Should().OnlyContain(minute => minute >= Minute(dusk.Day!, SunEventKind.Sunset) && minute <= Minute(dusk.Day!, SunEventKind.Sunset) + 5);
        Times(dawn).Select(time => time.To).Should().OnlyContain(minute => minute <= Minute(dawn.Day!, SunEventKind.Sunrise) && minute >= Minute(dawn.Day!, SunEventKind.Sunrise) - 5);

        static IEnumerable<LightTime> Times(Plan plan) => plan.Session!.Blocks.Single().Hours!.Times;
    }

    // Nights of June: the sun more than 6° under the horizon from about 22:50 to 04:30, one stretch over midnight.
    [Fact]
    public void A_night_is_one_stretch_over_midnight()
    {
        var hours = Planned(site: June, window: "EV -6 to EV 18", moth: "night", newt: "night").Session!.Blocks.Single().Hours!;

        hours.Times.Where(time => time.Sky == SkyState.Sun).Should().OnlyContain(time => time.From > 22 * 60);
        Planned(site: June, window: "EV -6 to EV 18", moth: "23:50 to 00:40", newt: "23:00 to 01:00").Session!.Blocks.Single().Hours!.Times
            .Should().OnlyContain(time => time.From == (23 * 60) + 50 && time.To == (24 * 60) + 40);
    }

    [Fact]
    public void Hours_of_a_subject_count_without_a_sun_too()
    {
        var plan = Planned(moth: "21:30 to 22:00", newt: "21:30 to 22:00");

        var hours = plan.Session!.Blocks.Single().Hours!;
        hours.Times.Should().Equal(new LightTime(null, (21 * 60) + 30, 22 * 60));
        plan.Checks.Single(check => check.Kind == PlanCheckKind.DayTime).Passed.Should().BeTrue();
        Planned(moth: "21:30 to 21:40", newt: "21:30 to 21:40").Checks.Single(check => check.Kind == PlanCheckKind.DayTime).Passed.Should().BeFalse();
    }

    [Fact]
    public void A_subject_that_is_about_by_the_sun_is_told_of_where_no_sun_is_looked_at()
    {
        var plan = Planned(moth: "dusk");

        plan.Session!.Blocks.Should().ContainSingle().Which.Hours.Should().BeNull();
        plan.Session.Notes.Should().Contain(note => note.StartsWith("moth is about by the sun", StringComparison.Ordinal));
    }

    // At 75° N the sun of June never sets and that of December never rises.
    [Theory]
    [InlineData("2026-06-14", "night", false)]
    [InlineData("2026-06-14", "day", true)]
    [InlineData("2026-12-14", "day", false)]
    public void In_polar_day_and_night_what_needs_the_other_cannot_be(string date, string active, bool passes)
    {
        var plan = Planned(site: $", date: {date}, latitude: 75°, longitude: 20°, utc-offset: +1 h", window: "EV -6 to EV 18", moth: active, newt: active);

        plan.Checks.Single(check => check.Kind == PlanCheckKind.DayTime).Passed.Should().Be(passes);
        plan.Day!.Events.Should().NotContain(of => of.Kind == SunEventKind.Sunrise || of.Kind == SunEventKind.Sunset);
    }

    [Fact]
    public void The_kits_own_shade_is_darker_by_what_it_gives()
    {
        var (open, deep) = (Planned(site: June).Day!, Planned(site: June + ", shade-loss: 2 stops").Day!);

        foreach (var (first, second) in open.Hours.Zip(deep.Hours))
        {
            second.Lights[(int)SkyState.Shade].Typical.AtIso100.Should().BeApproximately(first.Lights[(int)SkyState.Shade].Typical.AtIso100 - 2, 1e-9);
            second.Lights[(int)SkyState.Sun].Should().Be(first.Lights[(int)SkyState.Sun]);
        }
    }

    [Fact]
    public void The_sun_brings_its_caution() => Planned(site: June).Cautions.Should().Contain(caution => caution.Kind == CautionKind.Sun);

    /// <summary>Stretches of a random day: each lies in the light, at the hours, while the subject is about; what is left out lacks one of them.</summary>
    [Fact]
    public void A_days_stretches_hold_what_they_promise() =>
        Gen.Select(Gen.Double[-80, 80], Gen.Double[-180, 180], Gen.Int[0, 364], Gen.Double[-6, 12], Gen.Double[0.5, 6], Gen.Select(Gen.Int[0, 1439], Gen.Int[0, 1439]).Where(of => of.Item1 != of.Item2))
            .Sample((latitude, longitude, date, darkest, span, hours) =>
            {
                var site = new SiteSpec { Date = new DateOnly(2026, 1, 1).AddDays(date), Latitude = Angle.FromDegrees(latitude), Longitude = Angle.FromDegrees(longitude) };
                var light = new LightRange(new ExposureValue(darkest), new ExposureValue(darkest + span));
                var clock = new ClockRange(hours.Item1, hours.Item2);
                var times = DayCourse.Of(site).Times(light, clock, []);
                for (var minute = 0; minute < 1440; minute += 60)
                {
                    foreach (var sky in Enum.GetValues<SkyState>())
                    {
                        var inside = times.Any(time => time.Sky == sky && ((time.From <= minute && minute < time.To) || (time.From <= minute + 1440 && minute + 1440 < time.To)));
                        var (now, next) = (LightAt(site, minute, sky), LightAt(site, minute + 5, sky));
                        var allowed = light.Holds(now) && light.Holds(next) && clock.Holds(minute) && clock.Holds((minute + 4) % 1440);

                        // One that came over from the evening before counts in the evening, with that day's sun.
                        if (inside != allowed)
                        {
                            times.Should().Contain(time => time.Sky == sky && time.To > 1440, "{0} in {1} of {2}", minute, sky, site.Date);
                        }
                    }
                }
            });

    private static ExposureValue LightAt(SiteSpec site, int minute, SkyState sky)
    {
        var sun = SolarPosition.At(new GeographicPlace(site.Latitude!.Value, site.Longitude!.Value), site.Date!.Value, minute - site.ClockOffset.Minutes);
        var light = sun.SeenHeight < DaylightIlluminance.Lowest ? double.NegativeInfinity : DaylightIlluminance.Expected(sun.SeenHeight, sky).Typical.AtIso100;

        // A kit's light ends at EV -6, which stands for all that is darker.
        return new ExposureValue(Math.Max(-6, light));
    }

    private static double Light(int minute, SkyState sky) => LightAt(
        new SiteSpec { Date = new DateOnly(2026, 6, 14), Latitude = Angle.FromDegrees(52.3), Longitude = Angle.FromDegrees(5.1), UtcOffset = Duration.FromHours(2) }, minute, sky).AtIso100;

    private static int Minute(DayPlan day, SunEventKind kind) => day.Events.Single(of => of.Kind == kind).Minute;

    private static string Clock(int minute) => string.Create(CultureInfo.InvariantCulture, $"{minute / 60 % 24:00}:{minute % 60:00}");

    private static Plan Planned(string site = "", string window = "EV 4 to EV 12", string clock = "", string moth = "", string newt = "", int rounds = 1) => KitText.Plan(Fen
        .Replace("SITE", site, StringComparison.Ordinal)
        .Replace("WINDOW", window, StringComparison.Ordinal)
        .Replace("CLOCK", clock.Length == 0 ? "" : $"\n    clock: {clock}", StringComparison.Ordinal)
        .Replace("MOTH", moth.Length == 0 ? "" : $", active: {moth}", StringComparison.Ordinal)
        .Replace("NEWT", newt.Length == 0 ? "" : $", active: {newt}", StringComparison.Ordinal)
        .Replace("ROUNDS", rounds.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal));
}
