using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class DialMarkTests
{
    /// <summary>What displays of battery flashes show, click by click from full power down (common practice, no source).</summary>
    [Theory]
    [InlineData(PowerStep.Third, "1/1", "1/1.3 (1/2 + 2/3)", "1/1.6 (1/2 + 1/3)", "1/2", "1/2.5 (1/4 + 2/3)", "1/3.2 (1/4 + 1/3)", "1/4", "1/5 (1/8 + 2/3)", "1/6.4 (1/8 + 1/3)", "1/8", "1/10 (1/16 + 2/3)", "1/13 (1/16 + 1/3)", "1/16")]
    [InlineData(PowerStep.Half, "1/1", "1/1.4 (1/2 + 1/2)", "1/2", "1/2.8 (1/4 + 1/2)", "1/4", "1/5.6 (1/8 + 1/2)", "1/8", "1/11 (1/16 + 1/2)", "1/16", "1/22 (1/32 + 1/2)", "1/32")]
    [InlineData(PowerStep.Whole, "1/1", "1/2", "1/4", "1/8", "1/16", "1/32", "1/64", "1/128", "1/256")]
    public void Turning_down_click_by_click_shows_the_marks_of_the_dial(PowerStep step, params string[] marks)
    {
        var shown = new List<string>();
        for (var mark = new DialMark(FlashPower.Full, step); shown.Count < marks.Length; mark = mark.Darker)
        {
            shown.Add(mark.Nominal);
        }

        shown.Should().Equal(marks);
    }

    /// <summary>1/8 + 1/3 says: 1/8, and a third of a stop more, 2^(−3 + 1/3) = 2^(−8/3).</summary>
    [Fact]
    public void What_is_added_to_a_full_stop_makes_it_brighter()
    {
        var mark = new DialMark(new FlashPower(Math.Pow(2, -8.0 / 3)), PowerStep.Third);

        mark.AsOneFraction.Should().Be("1/6.4");
        mark.InFullStops.Should().Be("1/8 + 1/3");
    }

    [Fact]
    public void Brighter_takes_back_what_darker_did_and_full_power_is_the_end() =>
        Gen.Select(Gen.Enum<PowerStep>(), Gen.Int[0, 30]).Sample((step, clicks) =>
        {
            var mark = new DialMark(FlashPower.FromStopsBelowFull((double)clicks / step.ClicksPerStop()), step);
            return Math.Abs(mark.Darker.Brighter.ClicksBelowFull - clicks) < 1e-9
                && Math.Abs(mark.Brighter.ClicksBelowFull - Math.Max(0, clicks - 1)) < 1e-9;
        });

    [Fact]
    public void The_click_not_under_a_power_is_at_most_one_click_brighter() =>
        Gen.Select(Gen.Enum<PowerStep>(), Gen.Double[0, 12]).Sample((step, stops) =>
        {
            var wanted = FlashPower.FromStopsBelowFull(stops);
            var brighter = stops - DialMark.NotUnder(wanted, step).Power.StopsBelowFull;
            return brighter >= -1e-9 && brighter < step.OneClick().Value + 1e-9;
        });

    [Fact]
    public void A_dial_of_whole_stops_shows_no_part_of_a_stop_and_one_of_halves_no_third() =>
        Gen.Int[0, 24].Sample(clicks =>
        {
            var halves = new DialMark(FlashPower.FromStopsBelowFull(clicks / 2.0), PowerStep.Half);
            var whole = new DialMark(FlashPower.FromStopsBelowFull(clicks), PowerStep.Whole);
            return !halves.InFullStops.EndsWith("/3", StringComparison.Ordinal) && whole.Nominal == FormattableString.Invariant($"1/{Math.Pow(2, clicks):0}");
        });

    /// <summary>What somebody typed for a flash of another dial is shown as it was meant.</summary>
    [Theory]
    [InlineData(1 / 6.0, PowerStep.Third, "1/6")]
    [InlineData(1 / 11.0, PowerStep.Third, "1/11")]
    public void A_power_on_no_click_is_written_as_it_is(double fraction, PowerStep step, string text) =>
        new DialMark(new FlashPower(fraction), step).Nominal.Should().StartWith(text);

    [Fact]
    public void Brackets_and_rooms_are_counted_in_clicks_of_the_dial()
    {
        new Stops(0.5).NominalIn(PowerStep.Half).Should().Be("+1/2");
        new Stops(-1.5).NominalIn(PowerStep.Half).Should().Be("−1 1/2");
        new Stops(0.7).NominalIn(PowerStep.Whole).Should().Be("+1");
        PowerStep.Half.OneClick().CountIn(PowerStep.Half).Should().Be("1/2 stop");
        PowerStep.Whole.OneClick().CountIn(PowerStep.Whole).Should().Be("1 stop");
        new Stops(1.5).CountIn(PowerStep.Half).Should().Be("1 1/2 stops");
    }

    [Fact]
    public void A_step_that_no_dial_has_is_refused() =>
        FluentActions.Invoking(() => ((PowerStep)7).ClicksPerStop()).Should().Throw<ArgumentOutOfRangeException>();
}
