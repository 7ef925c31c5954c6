using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;

namespace StudioKit.Field.Tests.Analysis;

public sealed class BackgroundDoubtTests
{
    [Theory]
    [InlineData(0.5)]
    [InlineData(-1.5)]
    public void A_dark_subject_with_a_clear_edge_on_a_lit_panel_is_not_doubted(double centre) =>
        Analyse(new SensorModel(900, 600)
        {
            Margin = (u, v) => centre - (3 * (Square(u - 0.5) + Square(v - 0.4))),
            Subject = (u, v) => Distance(u, v) < 0.15 ? 0.05 : null,
        }).Doubt.Should().BeNull();

    [Fact]
    public void A_frame_with_nothing_near_white_is_no_white_background_frame() =>
        Analyse(new SensorModel(600, 400) { Margin = (_, v) => -4 - v }).Doubt.Should().Contain("near white");

    [Fact]
    public void Leaves_and_a_bright_patch_of_sky_are_no_white_background()
    {
        var frame = Analyse(new SensorModel(900, 600)
        {
            Margin = (u, v) => Distance(u, v) < 0.1 ? 1 : -3 + (1.5 * Math.Sin(60 * u) * Math.Sin(50 * v)),
        });

        frame.Doubt.Should().Contain("edge");
        TestFrameAdvice.After(frame, new BeneathFlash(new(0.1), new(0.01), UnitsNet.Length.FromMeters(0.3), UnitsNet.Length.FromMeters(0.1)), 0.3)
            .Power.Should().BeNull();
    }

    /// <summary>Light falls by five stops from the rim of the subject to its middle, over some half of the frame's height.</summary>
    [Theory]
    [InlineData(0.42)]
    [InlineData(0.55)]
    public void A_subject_far_out_of_focus_is_said_to_leak(double width) =>
        Analyse(new SensorModel(900, 600)
        {
            Margin = (u, v) => 0.5 - (5 * Math.Clamp((0.4 - Distance(u, v)) / (width * 2 / 3), 0, 1)),
        }).Doubt.Should().Contain("soft edge");

    private static FrameAnalysis Analyse(SensorModel sensor) => TestFrame.Analyse(sensor.Expose()).Value!;

    private static double Distance(double u, double v) => Math.Sqrt(Square(u - 0.5) + Square((v - 0.5) / 1.5));

    private static double Square(double x) => x * x;
}
