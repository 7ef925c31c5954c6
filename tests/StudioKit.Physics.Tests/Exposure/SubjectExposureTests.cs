using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Metering;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class SubjectExposureTests
{
    // Where the incident-light meter, and with it the guide-number rule, puts 18 %: H·S = q·ρ·C/π = 0.65·0.18·250/π = 9.31, so 3.067 stops under 78/S.
    private static readonly Stops GuideNumberMidTone = Stops.FromRatio(78 * Math.PI / (0.65 * 0.18 * 250));

    // Derived, evaluated by an independent program: GN 36 m, 0.3 m, loss 1.3 stop, N_e 24, ISO 200 needs GN 7.989, power 0.04925.
    private static readonly SubjectExposureCase Key = new()
    {
        Flash = new FlashCase
        {
            GuideNumber = Length.FromMeters(36),
            Distance = Length.FromMeters(0.3),
            ModifierLoss = new Stops(1.3),
            OutdoorCorrection = default,
        },
        Camera = new CameraCase { Aperture = new FNumber(24), Iso = new IsoSpeed(200), MidToneUnderClipping = GuideNumberMidTone },
    };

    [Fact]
    public void The_worked_key_light_needs_a_twentieth_of_full_power()
    {
        var solved = SubjectExposure.PowerFor(Key);
        Math.Pow(2, solved.ExactStops.Value).Should().BeApproximately(0.04925, 0.002 * 0.04925);
        solved.Power.StopsBelowFull.Should().BeApproximately(4 + (1.0 / 3), 1e-9);
        FlashExposure.ScaledGuideNumber(Key.Flash.GuideNumber, new FlashPower(0.04925), new IsoSpeed(100)).Meters.Should().BeApproximately(7.989, 0.002);
    }

    // ISO 12232 against the guide-number rule: 9.93/S to 9.31/S is 0.09 stop.
    [Fact]
    public void The_usual_mid_tone_asks_a_tenth_of_a_stop_more_than_the_guide_number_rule()
    {
        var usual = Key with { Camera = Key.Camera with { MidToneUnderClipping = new Stops(SensorExposure.MidToneUnderClipping) } };
        (SubjectExposure.PowerFor(usual).ExactStops.Value - SubjectExposure.PowerFor(Key).ExactStops.Value).Should().BeApproximately(0.09, 0.01);
    }

    [Fact]
    public void Budget_lines_add_up_to_the_level() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.05, 2], Gen.Double[0.03, 1], Gen.Double[0, 6]).Sample((gn, distance, reflectance, down) =>
        {
            var subject = Key with
            {
                Flash = Key.Flash with
                {
                    GuideNumber = Length.FromMeters(gn),
                    Distance = Length.FromMeters(distance),
                    Power = FlashPower.FromStopsBelowFull(down),
                    HeadWidth = Length.FromMillimeters(120),
                    HeadHeight = Length.FromMillimeters(90),
                },
                Reflectance = reflectance,
            };
            return Math.Abs(SubjectExposure.Budget(subject).Total.Value - SubjectExposure.Level(subject).Value) < 1e-9;
        });

    [Fact]
    public void A_fill_two_stops_under_takes_a_quarter_of_the_power() =>
        (SubjectExposure.PowerFor(Key).ExactStops - SubjectExposure.PowerFor(Key, new Stops(-2)).ExactStops).Value.Should().BeApproximately(2, 1e-12);

    [Fact]
    public void The_solved_power_lands_within_a_sixth_of_a_stop() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[0.1, 1]).Sample((gn, distance) =>
        {
            var solved = SubjectExposure.PowerFor(Key with
            {
                Flash = Key.Flash with { GuideNumber = Length.FromMeters(gn), Distance = Length.FromMeters(distance) },
            });
            return !solved.IsReached || Math.Abs(solved.Level.Value) <= (1.0 / 6) + 1e-9;
        });

    [Fact]
    public void A_correctly_exposed_white_card_stays_under_clipping()
    {
        var exact = Key with { Flash = Key.Flash with { Power = new FlashPower(0.04925) } };
        SubjectExposure.AgainstClipping(exact, 0.9).Value.Should().BeApproximately(-0.745, 0.005);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.2)]
    [InlineData(double.NaN)]
    public void A_subject_that_cannot_be_is_refused(double reflectance) =>
        FluentActions.Invoking(() => SubjectExposure.Level(Key with { Reflectance = reflectance })).Should().Throw<ArgumentOutOfRangeException>();
}
