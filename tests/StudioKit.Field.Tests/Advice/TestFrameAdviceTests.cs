using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Tests.Advice;

public sealed class TestFrameAdviceTests
{
    private static readonly BeneathFlash Flash = new(
        new FlashPower(1.0 / 8), new FlashPower(1.0 / 128), Length.FromCentimeters(25), Length.FromCentimeters(12));

    /// <summary>A stop more light needs the distance divided by the root of two: 25 cm becomes 17.7 cm (inverse square law).</summary>
    [Fact]
    public void A_panel_two_thirds_under_with_a_third_to_spare_needs_one_stop()
    {
        var advice = TestFrameAdvice.After(Frame(-0.65), Flash, 1.0 / 3);

        advice.ChangeStops.Should().BeApproximately(1, 1e-9);
        advice.Power!.Value.Fraction.Should().BeApproximately(0.25, 1e-9);
        advice.Distance!.Value.Centimeters.Should().BeApproximately(17.68, 0.01);
        advice.Sentences.Should().Contain(sentence => sentence.Contains("up 1 stop")).And.Contain("Or move it 7 cm closer, to 18 cm.");
    }

    /// <summary>
    /// Two and a half stops from brightest to darkest: with a third to spare the brightest lies 2.5 + 1/3 over, where 2 % of glare lifts a
    /// mid-tone 2.97 stops under by log₂(1 + 0.02·2^2.83·2^2.97) = 1.05 stops (ISO 9358 index, by superposition), more than the usual 0.7.
    /// </summary>
    [Fact]
    public void No_advice_makes_a_panel_white_by_veiling_the_subject()
    {
        var frame = TestFrame.AnalyseBarePanel(new SensorModel(480, 320) { Margin = (u, _) => -0.2 - (2.5 * u) }.Expose()).Value!;

        var advice = TestFrameAdvice.After(frame, Flash, 1.0 / 3);

        (advice.Mark, advice.Distance).Should().Be((null, null));
        advice.Sentences.Should().ContainSingle().Which.Should().Contain("where the veil allows 2.0").And.Contain("more even");
    }

    [Fact]
    public void A_white_panel_is_left_alone() =>
        TestFrameAdvice.After(Frame(0.8), Flash, 1.0 / 3).ChangeStops.Should().Be(0);

    [Fact]
    public void More_than_full_power_is_never_advised()
    {
        var advice = TestFrameAdvice.After(Frame(-4), Flash, 1.0 / 3);

        advice.Power.Should().BeNull();
        advice.Distance.Should().BeNull();
        advice.Sentences.Should().Contain(sentence => sentence.Contains("does not reach")).And.Contain(sentence => sentence.Contains("ISO"));
    }

    /// <summary>The darkest cell clips at 1/8, the brightest at 1/64: with a third to spare the brightest lies 3 1/3 over, where the veil allows 2 (as above).</summary>
    [Theory]
    [InlineData(1.0 / 8, "More light alone will not do")]
    [InlineData(1.0 / 2, "Less light alone will not do")]
    public void No_advice_after_a_ladder_makes_a_panel_white_by_veiling_the_subject(double power, string said)
    {
        var map = new MeasuredMarginMap(2, 1, [new LadderCell(LadderCellKind.Bracketed, -3, 0.05), new LadderCell(LadderCellKind.Bracketed, -6, 0.05)], 1, []);

        var advice = TestFrameAdvice.After(map, Flash with { Power = new FlashPower(power) }, 1.0 / 3)!;

        (advice.Mark, advice.Distance).Should().Be((null, null));
        advice.Sentences.Should().ContainSingle().Which.Should().Contain(said).And.Contain("3.3 stops over clipping, where the veil allows 2.0");
    }

    [Fact]
    public void A_ladder_can_advise_less_power()
    {
        // All cells clip at 1/32 of full power; at 1/8 with a third to spare that is 1 2/3 stops too much.
        var map = new MeasuredMarginMap(1, 1, [new LadderCell(LadderCellKind.Bracketed, -5, 0.05)], 1, []);

        var advice = TestFrameAdvice.After(map, Flash, 1.0 / 3)!;

        advice.ChangeStops.Should().BeApproximately(-5.0 / 3, 1e-9);
        advice.Sentences[0].Should().Contain("down 1 2/3 stops");
    }

    /// <summary>By hand: two thirds of a stop more from 1/8 is 1/5 on a dial of thirds, 1/4 on one of halves or whole stops, which have nothing between.</summary>
    [Theory]
    [InlineData(PowerStep.Third, "up 2/3 stop, to 1/5 (1/8 + 2/3)")]
    [InlineData(PowerStep.Half, "up 1 stop, to 1/4")]
    [InlineData(PowerStep.Whole, "up 1 stop, to 1/4")]
    public void The_power_advised_is_a_click_of_the_flashs_own_dial(PowerStep step, string turned) =>
        TestFrameAdvice.After(Frame(-0.3), Flash with { PowerStep = step }, 1.0 / 3).Sentences[0].Should().Contain(turned);

    /// <summary>A third of a stop too much, and no click between 1/8 and 1/16, which would be too little.</summary>
    [Fact]
    public void A_dial_of_whole_stops_stays_where_its_next_click_is_too_little()
    {
        var map = new MeasuredMarginMap(1, 1, [new LadderCell(LadderCellKind.Bracketed, -11.0 / 3, 0.05)], 1, []);

        var advice = TestFrameAdvice.After(map, Flash with { PowerStep = PowerStep.Whole }, 1.0 / 3)!;

        advice.Mark!.Value.AsOneFraction.Should().Be("1/8");
        advice.Sentences[0].Should().Contain("leave it at 1/8");
    }

    private static FrameAnalysis Frame(double margin) => TestFrame.AnalyseBarePanel(
        new SensorModel(240, 160) { Margin = (_, _) => margin }.Expose()).Value!;
}
