using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class WhiteMarginTests
{
    // One whole chain, evaluated by an independent program: GN 30 m, power 1/5.04, 0.45 m, T 0.5, f/16 at 1:1, ISO 500.
    private static readonly WhiteMarginCase Chain = new()
    {
        Flash = new FlashCase
        {
            GuideNumber = Length.FromMeters(30),
            Power = ThirdStopSeries.FromMark(new FlashPower(0.2)),
            Distance = Length.FromCentimeters(45),
            OutdoorCorrection = default,
        },
        Camera = new CameraCase { Aperture = new FNumber(16), EffectiveFNumber = new FNumber(32), Iso = new IsoSpeed(500) },
        Transmittance = 0.5,
    };

    private static readonly Gen<WhiteMarginCase> AnyPanel =
        Gen.Select(Gen.Double[5, 60], Gen.Double[-7, 0], Gen.Double[0.1, 1.5], Gen.Double[0.05, 1], Gen.Double[2, 45], Gen.Double[1, 3], Gen.Double[0, 2])
            .Select((gn, power, distance, transmittance, aperture, bellows, loss) => new WhiteMarginCase
            {
                Flash = new FlashCase
                {
                    GuideNumber = Length.FromMeters(gn),
                    Power = FlashPower.FromStopsBelowFull(-power),
                    Distance = Length.FromMeters(distance),
                    HeadWidth = Length.FromMillimeters(70),
                    HeadHeight = Length.FromMillimeters(40),
                    ModifierLoss = new Stops(loss),
                },
                Camera = new CameraCase
                {
                    Aperture = new FNumber(aperture),
                    EffectiveFNumber = new FNumber(aperture * bellows),
                    FilterLoss = new Stops(loss),
                    ClipPoint = new Stops(loss / 3),
                },
                Transmittance = transmittance,
                DarkestPoint = new Stops(-loss),
            });

    [Theory]
    [InlineData(0, 0.51)]
    [InlineData(-0.5, 0.01)]
    public void The_worked_chain_gives_its_white_margin(double outdoor, double margin)
    {
        var panel = Chain with { Flash = Chain.Flash with { OutdoorCorrection = new Stops(outdoor) } };
        WhiteMargin.Level(panel).Value.Should().BeApproximately(margin, 0.005);
        WhiteMargin.Budget(panel).Total.Value.Should().BeApproximately(margin, 0.005);
    }

    [Fact]
    public void The_worked_chains_intermediates_agree()
    {
        var onPanel = FlashExposure.LuminousExposure(Chain.Flash.GuideNumber, Chain.Flash.Power, Chain.Flash.Distance);
        onPanel.Should().BeApproximately(2204.6, 0.5);
        (0.5 * onPanel / Math.PI).Should().BeApproximately(350.9, 0.05);
        SensorExposure.SaturationExposure(new IsoSpeed(500)).Should().BeApproximately(0.156, 1e-12);
    }

    // Derived chains evaluated by an independent program: GN 36 m at 0.25 m under T = 0.5; tolerance 0.01 stop.
    [Theory]
    [InlineData(16, 100, 24, -0.423)]
    [InlineData(16, 100, 16.5, 0.658)]
    [InlineData(8, 200, 24, 1.577)]
    [InlineData(16, 100, 20.73, 0)]
    public void A_second_set_of_chains_agrees(double powerDivisor, double iso, double effective, double margin) =>
        WhiteMargin.Level(Second(powerDivisor, iso, effective)).Value.Should().BeApproximately(margin, 0.01);

    [Fact]
    public void Budget_lines_add_up_to_the_margin_whatever_the_case() =>
        AnyPanel.Sample(panel => Math.Abs(WhiteMargin.Budget(panel).Total.Value - WhiteMargin.Level(panel).Value) < 1e-9);

    [Fact]
    public void Every_budget_line_names_a_known_source_and_a_detail() =>
        AnyPanel.Sample(panel => WhiteMargin.Budget(panel).Lines.All(line =>
            Bibliography.Entries.ContainsKey(line.SourceKey) && line.SourceLocator.Length > 0 && line.Detail.Length > 0));

    [Fact]
    public void A_stop_of_ISO_equals_a_stop_of_power() =>
        AnyPanel.Sample(panel =>
        {
            var faster = panel with { Camera = panel.Camera with { Iso = new IsoSpeed(200) } };
            var weaker = faster with { Flash = faster.Flash with { Power = new FlashPower(faster.Flash.Power.Fraction / 2) } };
            return Math.Abs(WhiteMargin.Level(weaker).Value - WhiteMargin.Level(panel).Value) < 1e-9;
        });

    [Fact]
    public void The_solved_power_meets_its_target_by_less_than_a_third() =>
        AnyPanel.Sample(panel =>
        {
            var solved = WhiteMargin.PowerFor(panel, new Stops(1.0 / 3));
            var again = WhiteMargin.Level(panel with { Flash = panel.Flash with { Power = solved.Power } });
            var agrees = Math.Abs(again.Value - solved.Level.Value) < 1e-9;
            return agrees && solved.Limit switch
            {
                PowerLimit.None => again.Value >= (1.0 / 3) - 1e-6 && again.Value < (2.0 / 3) + 1e-6,
                PowerLimit.FullPower => again.Value < 1.0 / 3 && solved.Power == FlashPower.Full,
                _ => again.Value > 1.0 / 3,
            };
        });

    [Fact]
    public void Out_of_reach_is_said_with_the_end_of_the_dial()
    {
        var far = Second(1, 100, 32) with { Flash = Second(1, 100, 32).Flash with { Distance = Length.FromMeters(3) } };
        WhiteMargin.PowerFor(far, new Stops(0.5)).Limit.Should().Be(PowerLimit.FullPower);

        var near = Second(1, 6400, 8);
        WhiteMargin.PowerFor(near, new Stops(0.5)).Limit.Should().Be(PowerLimit.LowestPower);
    }

    [Fact]
    public void Uncertainty_combines_in_quadrature_and_sets_the_bracket()
    {
        var budget = WhiteMargin.Budget(Chain with
        {
            Uncertainty = LightUncertainty.None with { GuideNumber = new Stops(0.3), ClipPoint = new Stops(0.4) },
        });
        budget.Uncertainty.Value.Should().BeApproximately(0.5, 1e-12);
        budget.Bracket(PowerStep.Third).Value.Should().BeApproximately(2.0 / 3, 1e-12);
        WhiteMargin.Budget(Chain with { Uncertainty = LightUncertainty.None }).Bracket(PowerStep.Third).Nominal.Should().Be("+1/3");
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void A_panel_that_no_sheet_can_be_is_refused(double transmittance) =>
        FluentActions.Invoking(() => WhiteMargin.Budget(Chain with { Transmittance = transmittance })).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void A_flash_touching_the_panel_is_refused() =>
        FluentActions.Invoking(() => WhiteMargin.Level(Chain with { Flash = Chain.Flash with { Distance = Length.Zero } }))
            .Should().Throw<ArgumentOutOfRangeException>();

    private static WhiteMarginCase Second(double powerDivisor, double iso, double effective) => new()
    {
        Flash = new FlashCase
        {
            GuideNumber = Length.FromMeters(36),
            Power = new FlashPower(1 / powerDivisor),
            Distance = Length.FromMeters(0.25),
            OutdoorCorrection = default,
        },
        Camera = new CameraCase { Aperture = new FNumber(effective), Iso = new IsoSpeed(iso) },
        Transmittance = 0.5,
    };

    [Theory]
    [InlineData(1.5, "1.50 stops lost")]
    [InlineData(2.0 / 3, "0.67 stops lost")]
    public void A_filters_line_gives_one_number(double loss, string detail)
    {
        var line = WhiteMargin.Budget(Chain with { Camera = Chain.Camera with { FilterLoss = new Stops(loss) } }).Lines.Single(line => line.Item == "Filters");

        line.Stops.Value.Should().BeApproximately(-loss, 1e-12);
        line.Detail.Should().Be(detail);
    }
}
