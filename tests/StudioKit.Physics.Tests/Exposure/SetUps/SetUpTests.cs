using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure.SetUps;

public sealed class SetUpTests
{
    private static readonly Gen<(double Ev, double Gn, double Cm, double N, double Bellows)> AnyPlace =
        Gen.Select(Gen.Double[3, 16], Gen.Double[10, 60], Gen.Double[15, 120], Gen.Double[4, 32], Gen.Double[1, 3]);

    [Fact]
    public void A_white_background_that_works_meets_every_limit_when_evaluated_again() =>
        AnyPlace.Sample(place =>
        {
            var setUp = White(place);
            var solved = WhiteBackgroundSetUp.Solve(setUp);
            return !solved.Works
                || (KeepsLimits(solved, setUp)
                    && WhiteMargin.Level(solved.Lights[0].Panel!).Value >= setUp.TargetWhiteMargin.Value - 1e-6
                    && Math.Abs(SubjectExposure.Level(solved.Lights[1].Subject!).Value) < 0.2 + (1.0 / 6)
                    && Ambient(solved, setUp) <= -setUp.AmbientBelowFlash.Value + 1e-6
                    && solved.BrightestMargin!.Value.Value <= solved.HighestMargin!.Value.Value);
        });

    [Fact]
    public void A_dark_background_that_works_meets_every_limit_when_evaluated_again() =>
        AnyPlace.Sample(place =>
        {
            var setUp = Dark(place);
            var solved = DarkBackgroundSetUp.Solve(setUp);
            return !solved.Works
                || (KeepsLimits(solved, setUp)
                    && Ambient(solved, setUp) <= -setUp.BackgroundUnder.Value + 1e-6
                    && solved.Lights.All(light => Math.Abs(SubjectExposure.Level(light.Subject!).Value - light.Power.Target.Value) < 0.17));
        });

    [Fact]
    public void A_fill_that_works_meets_every_limit_when_evaluated_again() =>
        AnyPlace.Sample(place =>
        {
            var daylight = Daylight(place);
            var bright = DaylightFillSetUp.Solve(daylight);
            var dusk = Dusk(place);
            var dim = LowLightFillSetUp.Solve(dusk);
            return (!bright.Works || (KeepsLimits(bright, daylight) && Math.Abs(Ambient(bright, daylight)) < 0.34))
                && (!dim.Works || (KeepsLimits(dim, dusk) && Math.Abs(Ambient(dim, dusk)) < 0.34));
        });

    [Fact]
    public void Whatever_the_place_nothing_is_infinite_and_a_failure_says_why() =>
        AnyPlace.Sample(place =>
        {
            SetUpResult[] all =
            [
                WhiteBackgroundSetUp.Solve(White(place)), DarkBackgroundSetUp.Solve(Dark(place)),
                DaylightFillSetUp.Solve(Daylight(place)), LowLightFillSetUp.Solve(Dusk(place)),
            ];
            return all.All(solved => double.IsFinite(solved.SubjectLevel.Value) && double.IsFinite(solved.AmbientLevel.Value)
                && solved.Lights.All(light => double.IsFinite(light.Budget.Total.Value) && light.Power.Power.Fraction is > 0 and <= 1)
                && (solved.Works || solved.Missed.All(limit => limit.By is { Value: > 0 })));
        });

    [Fact]
    public void A_flash_too_weak_below_asks_for_a_faster_speed_than_the_camera_has()
    {
        var weak = Scenes.White with
        {
            Below = Scenes.White.Below with { GuideNumber = Length.FromMeters(10), Distance = Length.FromCentimeters(60) },
            Limits = new SetUpLimits { HighestIso = new IsoSpeed(500) },
        };

        // GN 10 in place of 30 m is 3.2 stops less, and 60 cm in place of 45 is 0.8 stops less.
        var missed = WhiteBackgroundSetUp.Solve(weak).Missed[0].Should().BeOfType<MissedLimit.IsoConflict>().Subject;
        (missed.NeededFor, missed.NeedingFlash!.Name).Should().Be((IsoBound.FlashTooWeak, "flash below"));
        (missed.AllowedBy, missed.Allowed.Nominal).Should().Be((IsoBound.Camera, "ISO 500"));
    }

    [Fact]
    public void In_full_sun_on_the_panel_the_flash_asks_for_more_than_daylight_allows()
    {
        var sunny = Scenes.White with { Ambient = new ExposureValue(15), Camera = Scenes.White.Camera with { EffectiveFNumber = new FNumber(20) } };

        var missed = WhiteBackgroundSetUp.Solve(sunny).Missed[0].Should().BeOfType<MissedLimit.IsoConflict>().Subject;
        missed.AllowedBy.Should().Be(IsoBound.Ambient);
        missed.By!.Value.Value.Should().BeApproximately(Math.Log2(missed.Needed.Value / missed.Allowed.Value), 1e-9).And.BePositive();
    }

    [Fact]
    public void Daylight_over_sync_is_told_by_how_much_it_is_too_bright()
    {
        var wideOpen = Scenes.Daylight with { Ambient = new ExposureValue(15), Camera = new CameraCase { Aperture = new FNumber(5.657) } };

        // EV 15 less the EV of f/5.66, 1/200 s, ISO 100: 5 + 7.64 = 12.64, so 2.36 stops over; by arithmetic.
        var solved = DaylightFillSetUp.Solve(wideOpen);
        var missed = solved.Missed[0].Should().BeOfType<MissedLimit.AmbientTooBright>().Subject;
        missed.By!.Value.Value.Should().BeApproximately(2.36, 0.005);
        (missed.Aperture.Nominal, missed.Shutter.Nominal, missed.Iso.Nominal).Should().Be(("f/5.6", "1/200 s", "ISO 100"));
    }

    [Fact]
    public void A_background_close_behind_is_lit_by_the_key()
    {
        var close = Scenes.Dark with { BackgroundDistance = Length.FromCentimeters(30) };

        DarkBackgroundSetUp.Solve(close).Missed.Should().ContainSingle(limit => limit is MissedLimit.LightsBackground);
    }

    // Inverse-square law: four stops is four times the distance, so three flash distances behind the subject.
    [Theory]
    [InlineData(0.5, 4, 1.5)]
    [InlineData(0.5, 2, 0.5)]
    [InlineData(0.3, 0, 0)]
    public void Background_distance_follows_the_inverse_square_law(double flash, double stops, double behind) =>
        DarkBackgroundSetUp.BackgroundDistance(Length.FromMeters(flash), new Stops(stops)).Meters.Should().BeApproximately(behind, 1e-12);

    /// <summary>Light adds: half from each of two makes the whole, and log2(1/2) = −1 stop.</summary>
    [Fact]
    public void Two_lights_of_one_role_share_the_level_and_give_one_stop_less_each()
    {
        var bright = DaylightFillSetUp.Solve(Scenes.Daylight);

        bright.Lights.Should().AllSatisfy(light => light.Power.Target.Value.Should().BeApproximately(
            Scenes.Daylight.FillLevel.Value - 1, 1e-9, "two equal lights share the level"));
    }

    /// <summary>Light adds: where daylight gives a share of the exposure, flash gives the rest, log2(1 − share).</summary>
    [Fact]
    public void The_flashes_leave_out_what_ambient_light_already_gives()
    {
        var shaded = WhiteBackgroundSetUp.Solve(Scenes.White with { Ambient = new ExposureValue(12.5), AmbientBelowFlash = new Stops(1) });

        var share = Math.Pow(2, shaded.AmbientLevel.Value);
        share.Should().BeInRange(0.1, 0.5, "else this shows nothing");
        shaded.Lights[1].Power.Target.Value.Should().BeApproximately(
            Math.Log2(1 - share), 1e-9, "the flash above adds only what daylight leaves to be added");
    }

    [Fact]
    public void The_ISO_comes_last_and_its_price_is_counted_in_stops()
    {
        var bright = LowLightFillSetUp.Solve(Scenes.Dusk);
        var dim = LowLightFillSetUp.Solve(Scenes.Dusk with { Ambient = new ExposureValue(9) });
        (dim.IsoAboveBase - bright.IsoAboveBase).Value.Should().BeApproximately(1, 1e-9);
        dim.Camera.Shutter.Should().Be(bright.Camera.Shutter);
    }

    [Fact]
    public void The_first_aperture_of_the_list_that_works_is_taken()
    {
        var list = Scenes.Daylight with
        {
            Ambient = new ExposureValue(15),
            Camera = new CameraCase { Aperture = new FNumber(5.657) },
            Apertures = [new FNumber(5.657), new FNumber(8), new FNumber(16), new FNumber(22.627)],
        };
        DaylightFillSetUp.Solve(list).Camera.Aperture.Nominal.Should().Be("f/16");
    }

    [Fact]
    public void A_shutter_faster_than_sync_is_slowed_and_said_so()
    {
        var fast = Scenes.White with { Camera = Scenes.White.Camera with { Shutter = new ShutterSpeed(1.0 / 800) } };
        var solved = WhiteBackgroundSetUp.Solve(fast);
        solved.Camera.Shutter.Nominal.Should().Be("1/200 s");
        solved.Caveats.Should().ContainSingle().Which.Should().Contain("faster than flash sync");
    }

    [Fact]
    public void A_limit_on_recycling_and_blur_caps_the_power()
    {
        var limited = Scenes.White with
        {
            Limits = new SetUpLimits { LongestRecycle = Duration.FromSeconds(0.4), LongestFlash = Duration.FromSeconds(1.0 / 2000) },
        };
        var solved = WhiteBackgroundSetUp.Solve(limited);
        solved.Lights.Should().OnlyContain(light =>
            light.RecycleTime.Seconds <= 0.4001 && light.FlashDuration.Seconds <= 1 / 1999.0);
        solved.IsoAboveBase.Value.Should().BeGreaterThan(WhiteBackgroundSetUp.Solve(Scenes.White).IsoAboveBase.Value);
    }

    // At m = 1 and 5 mm/s, 0.05 mm on the sensor takes 10 ms: 1/100 s on the dial (1/101.6 s exactly).
    [Fact]
    public void Longest_shutter_follows_from_blur_speed_and_magnification() =>
        AmbientBlur.LongestShutter(new Magnification(1), Speed.FromMillimetersPerSecond(5), Length.FromMillimeters(0.05))
            .Nominal.Should().Be("1/100 s");

    [Fact]
    public void Absurd_cases_are_refused()
    {
        FluentActions.Invoking(() => WhiteBackgroundSetUp.Solve(Scenes.White with { AmbientBelowFlash = new Stops(-1) }))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => WhiteBackgroundSetUp.Solve(Scenes.White with { Transmittance = 2 }))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => DarkBackgroundSetUp.Solve(Scenes.Dark with { BackgroundDistance = Length.FromMeters(-1) }))
            .Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => DaylightFillSetUp.Solve(Scenes.Daylight with { Limits = new SetUpLimits { HighestIso = new IsoSpeed(50) } }))
            .Should().Throw<ArgumentOutOfRangeException>();
    }

    private static double Ambient(SetUpResult solved, SetUpCase setUp) =>
        AmbientLight.Level(setUp.Ambient, solved.Camera.Effective, solved.Camera.Shutter, solved.Camera.Iso).Value - solved.Camera.FilterLoss.Value;

    private static bool KeepsLimits(SetUpResult solved, SetUpCase setUp) =>
        SyncLimit.Check(solved.Camera.Shutter, setUp.Limits.FlashSync).IsWithin
        && solved.Camera.Iso.Value >= 99.9 && solved.Camera.Iso.Value <= 3200.1
        && solved.Lights.All(light => light.Power.Power.Fraction >= light.Flash.LowestPower.Fraction - 1e-12);

    private static CameraCase Camera((double Ev, double Gn, double Cm, double N, double Bellows) place) =>
        new() { Aperture = new FNumber(place.N), EffectiveFNumber = new FNumber(place.N * place.Bellows) };

    private static FlashCase Strength(FlashCase flash, (double Ev, double Gn, double Cm, double N, double Bellows) place) =>
        flash with { GuideNumber = Length.FromMeters(place.Gn), Distance = Length.FromCentimeters(place.Cm) };

    private static WhiteBackgroundCase White((double Ev, double Gn, double Cm, double N, double Bellows) place) => Scenes.White with
    {
        Camera = Camera(place),
        Ambient = new ExposureValue(place.Ev),
        Below = Strength(Scenes.White.Below, place),
    };

    private static DarkBackgroundCase Dark((double Ev, double Gn, double Cm, double N, double Bellows) place) => Scenes.Dark with
    {
        Camera = Camera(place),
        Ambient = new ExposureValue(place.Ev),
        Lights = [new SubjectLight(Strength(Scenes.Dark.Lights[0].Flash, place))],
    };

    private static DaylightFillCase Daylight((double Ev, double Gn, double Cm, double N, double Bellows) place) => Scenes.Daylight with
    {
        Camera = Camera(place),
        Ambient = new ExposureValue(place.Ev),
        Lights = [new SubjectLight(Strength(Scenes.Daylight.Lights[0].Flash, place)), Scenes.Daylight.Lights[1]],
    };

    private static LowLightFillCase Dusk((double Ev, double Gn, double Cm, double N, double Bellows) place) => Scenes.Dusk with
    {
        Camera = Camera(place),
        Ambient = new ExposureValue(place.Ev),
        Lights = [new SubjectLight(Strength(Scenes.Dusk.Lights[0].Flash, place))],
    };
}
