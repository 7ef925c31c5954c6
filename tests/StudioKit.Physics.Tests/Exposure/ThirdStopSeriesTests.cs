using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Optics;

namespace StudioKit.Physics.Tests.Exposure;

public sealed class ThirdStopSeriesTests
{
    public static TheoryData<string, double, string> Marks()
    {
        var data = new TheoryData<string, double, string>();
        foreach (var row in ExposureTable.Rows("third-stop-marks.csv"))
        {
            data.Add(row[0], ExposureTable.Number(row[1]), row[2]);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Marks))]
    public void An_exact_step_shows_the_mark_of_the_dial(string kind, double k, string mark) =>
        (kind switch
        {
            "f-number" => new FNumber(Math.Pow(2, k / 6)).ToString(),
            "time" => new ShutterSpeed(Math.Pow(2, k / 3)).ToString(),
            "speed" => new IsoSpeed(100 * Math.Pow(2, k / 3)).ToString(),
            _ => new FlashPower(Math.Pow(2, -k / 3)).ToString(),
        }).Should().Be(mark);

    [Theory]
    [MemberData(nameof(Marks))]
    public void A_mark_computes_as_the_exact_step_it_stands_for(string kind, double k, string mark)
    {
        var number = Written(mark);
        var (found, exact) = kind switch
        {
            "f-number" => (ThirdStopSeries.FromMark(new FNumber(number)).Value, Math.Pow(2, k / 6)),
            "time" => (ThirdStopSeries.FromMark(new ShutterSpeed(number)).Seconds, Math.Pow(2, k / 3)),
            "speed" => (ThirdStopSeries.FromMark(new IsoSpeed(number)).Value, 100 * Math.Pow(2, k / 3)),
            _ => (ThirdStopSeries.FromMark(new FlashPower(number)).Fraction, Math.Pow(2, -k / 3)),
        };

        found.Should().BeApproximately(exact, 1e-12 * exact);
    }

    [Fact]
    public void A_number_that_no_third_stop_dial_carries_is_taken_as_written()
    {
        ThirdStopSeries.FromMark(new FNumber(6.7)).Value.Should().Be(6.7);
        new FNumber(13.714).Nominal.Should().Be("f/13.7");
        new ShutterSpeed(1.0 / 180).Nominal.Should().Be("1/180 s");
    }

    [Fact]
    public void Next_click_from_a_rounded_mark_is_the_next_mark()
    {
        ThirdStopSeries.Darker(new FNumber(11)).Nominal.Should().Be("f/13");
        ThirdStopSeries.Brighter(new FNumber(11)).Nominal.Should().Be("f/10");
        ThirdStopSeries.Darker(new ShutterSpeed(1.0 / 60)).Nominal.Should().Be("1/80 s");
        ThirdStopSeries.Brighter(new ShutterSpeed(1.0 / 60)).Nominal.Should().Be("1/50 s");
        ThirdStopSeries.Brighter(new IsoSpeed(500)).Nominal.Should().Be("ISO 640");
        ThirdStopSeries.Darker(new IsoSpeed(500)).Nominal.Should().Be("ISO 400");
        new DialMark(new FlashPower(1 / 6.4), PowerStep.Third).Brighter.AsOneFraction.Should().Be("1/5");
        new DialMark(new FlashPower(1 / 6.4), PowerStep.Third).Darker.AsOneFraction.Should().Be("1/8");
    }

    [Fact]
    public void Next_click_is_a_third_of_a_stop_away_at_most_and_nearest_a_sixth() =>
        Gen.Double[0.7, 90].Sample(value =>
        {
            var here = new FNumber(value);
            var darker = 2 * Math.Log2(ThirdStopSeries.Darker(here).Value / ThirdStopSeries.FromMark(here).Value);
            var nearest = 2 * Math.Log2(ThirdStopSeries.Nearest(here).Value / value);
            return darker is > 0 and < (1 / 3.0) + 0.021 && Math.Abs(nearest) <= (1 / 6.0) + 1e-9;
        });

    [Theory]
    [InlineData(1.6667, "+1 2/3")]
    [InlineData(-0.3333, "−1/3")]
    [InlineData(-2, "−2")]
    [InlineData(0.1, "0")]
    [InlineData(0.95, "+1")]
    public void Stops_are_worded_in_thirds(double stops, string text) => new Stops(stops).Nominal.Should().Be(text);

    [Theory]
    [InlineData(0.514, "+0.51")]
    [InlineData(-0.5, "−0.50")]
    [InlineData(0.001, "0.00")]
    public void Stops_carry_their_sign(double stops, string text) => new Stops(stops).ToString().Should().Be(text);

    [Theory]
    [InlineData(0.5, "1:2")]
    [InlineData(1, "1:1")]
    [InlineData(1.5, "1.5:1")]
    [InlineData(0.55, "1:1.82")]
    public void Magnification_is_worded_as_image_to_object(double value, string text) =>
        new Magnification(value).ToString().Should().Be(text);

    private static double Written(string mark)
    {
        var text = mark.Replace("ISO ", "", StringComparison.Ordinal).Replace(" s", "", StringComparison.Ordinal)
            .Replace("f/", "", StringComparison.Ordinal);
        var parts = text.Split('/');
        return parts.Length == 1 ? ExposureTable.Number(parts[0]) : 1 / ExposureTable.Number(parts[1]);
    }
}
