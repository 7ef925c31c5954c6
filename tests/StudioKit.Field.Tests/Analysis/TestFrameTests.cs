using StudioKit.Field.Analysis;

namespace StudioKit.Field.Tests.Analysis;

public sealed class TestFrameTests
{
    /// <summary>The truth is the margin map that the frame was made from; 0.5 % is what the job asks for.</summary>
    [Theory]
    [InlineData(0.6, 1.5)]
    [InlineData(0.3, 3.0)]
    [InlineData(1.0, 2.0)]
    [InlineData(-0.2, 1.0)]
    public void Clipped_share_of_a_bare_panel_agrees_with_the_map_it_was_made_from(double centre, double fallOff)
    {
        var sensor = new SensorModel(720, 480) { Margin = (u, v) => centre - (fallOff * (Square(u - 0.45) + Square(v - 0.55)) * 2) };

        var analysis = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!;

        analysis.ClippedShare.Should().BeApproximately(sensor.TrueClippedShare(), 0.005);
    }

    [Fact]
    public void Clipped_share_around_a_subject_agrees_with_the_map_it_was_made_from()
    {
        var sensor = Spider(centre: 0.5);

        var analysis = TestFrame.Analyse(sensor.Expose()).Value!;

        analysis.ClippedShare.Should().BeApproximately(sensor.TrueClippedShare(), 0.005);
        analysis.SubjectShare.Should().BeInRange(0.03, 0.08, "the body covers π·0.18·0.12, some 7 % of the frame, less its outline");
    }

    [Fact]
    public void What_is_missing_is_told_in_stops_and_by_the_name_of_the_corner()
    {
        // Level half a stop over clipping, but a ramp down to 1.5 stops under it in the lower right corner.
        var sensor = new SensorModel(900, 600) { Margin = (u, v) => 0.5 - (2 * Math.Clamp((u + v - 1.4) / 0.6, 0, 1)) };

        var analysis = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!;

        // The darkest half percent is left out: u + v > 1.9, so the ramp has got to 5/6 of its two stops, 1.167 under clipping.
        analysis.StopsMissing.Should().BeApproximately(1.167, 0.05);
        analysis.Regions.Where(region => region.ClippedShare < 0.5).Select(region => region.Name).Should().Equal("bottom right corner");
        analysis.Regions.Single(region => region.Name == "top left corner").StopsMissing.Should().Be(0);
    }

    [Fact]
    public void Tint_just_under_clipping_is_that_of_the_light()
    {
        var sensor = new SensorModel(600, 400) { Margin = (_, _) => -0.5, RedGain = Math.Pow(2, 0.1), BlueGain = Math.Pow(2, -0.2) };

        var tint = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!.Tint!;

        tint.RedStops.Should().BeApproximately(0.1, 0.02);
        tint.BlueStops.Should().BeApproximately(-0.2, 0.02);
    }

    /// <summary>A frame two stops under clipping is one that somebody is about to mend, and its cast is the sheet's already.</summary>
    [Fact]
    public void Tint_two_stops_under_clipping_is_that_of_the_light()
    {
        var sensor = new SensorModel(600, 400) { Margin = (_, _) => -2, RedGain = Math.Pow(2, -0.3), BlueGain = Math.Pow(2, 0.3) };

        var tint = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!.Tint!;

        tint.RedStops.Should().BeApproximately(-0.3, 0.03);
        tint.BlueStops.Should().BeApproximately(0.3, 0.03);
    }

    /// <summary>A background is white only where its last channel clips: blue, 0.4 stop behind, misses 0.9 where green misses 0.5.</summary>
    [Fact]
    public void A_tinted_background_misses_what_its_darkest_channel_misses()
    {
        var sensor = new SensorModel(600, 400) { Margin = (_, _) => -0.5, BlueGain = Math.Pow(2, -0.4) };

        var analysis = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!;

        analysis.StopsMissing.Should().BeApproximately(0.9, 0.03);
        analysis.Cells[0].Light.Should().BeApproximately(Math.Pow(2, -0.9), 0.01);
    }

    [Fact]
    public void A_background_whose_blue_is_short_of_clipping_is_not_white() =>
        TestFrame.AnalyseBarePanel(new SensorModel(600, 400) { Margin = (_, _) => 0.2, BlueGain = Math.Pow(2, -0.5) }.Expose()).Value!
            .ClippedShare.Should().Be(0);

    [Fact]
    public void Veil_is_no_more_than_the_light_on_the_darkest_parts()
    {
        var sensor = Spider(centre: 1);

        var veil = TestFrame.Analyse(sensor.Expose()).Value!.Veil!;

        // The sensor model gives the body 4 % of saturation at its darkest.
        veil.ShareOfSaturation.Should().BeApproximately(0.04, 0.005);
        veil.StopsUnderClipping.Should().BeApproximately(4.64, 0.2);
    }

    [Fact]
    public void A_frame_that_is_white_all_over_misses_nothing()
    {
        var sensor = new SensorModel(300, 200) { Margin = (_, _) => 1 };

        var analysis = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!;

        analysis.ClippedShare.Should().Be(1);
        analysis.StopsMissing.Should().Be(0);
        analysis.Tint.Should().BeNull();
    }

    [Fact]
    public void Sharpness_is_greatest_where_the_detail_is()
    {
        // Fine bars in the right third only.
        var sensor = new SensorModel(600, 400) { Margin = (u, _) => u > 0.67 && (int)(u * 300) % 2 == 0 ? -3 : -1 };

        var sharpness = TestFrame.AnalyseBarePanel(sensor.Expose()).Value!.Sharpness;

        var tiles = sharpness.Relative.Select((value, i) => (Column: i % sharpness.Columns, value)).ToList();
        tiles.Where(tile => tile.Column >= 9).Should().OnlyContain(tile => tile.value > 0.7);
        tiles.Where(tile => tile.Column < 7).Should().OnlyContain(tile => tile.value < 0.3);
    }

    private static SensorModel Spider(double centre) => new(900, 600)
    {
        Margin = (u, v) => centre - (3 * (Square(u - 0.5) + Square(v - 0.4))),
        Subject = (u, v) => Square((u - 0.5) / 0.18) + Square((v - 0.5) / 0.12) < 1 ? 0.04 + (0.1 * Square(Math.Sin(40 * u))) : null,
    };

    private static double Square(double x) => x * x;
}
