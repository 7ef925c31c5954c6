using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;

namespace StudioKit.Field.Tests.Analysis;

public sealed class HatchedFrameTests
{
    [Fact]
    public void Only_the_corner_that_is_not_white_is_hatched_and_named()
    {
        var sensor = new SensorModel(300, 200) { Margin = (u, v) => u > 0.7 && v < 0.3 ? -1.2 : 1 };

        var frame = HatchedFrame.Of(TestFrame.AnalyseBarePanel(sensor.Expose()).Value!);

        frame.Labels.Should().ContainSingle().Which.Text.Should().Be("top right corner: 1.2 stop under");
        frame.Labels[0].Middle.Should().BeGreaterThan(0.66 * frame.Width);
        frame.Labels[0].Baseline.Should().BeLessThan(0.34 * frame.Height);
        var red = Enumerable.Range(0, frame.Width * frame.Height).Where(i => frame.Rgba[4 * i] > frame.Rgba[(4 * i) + 1] + 50).ToList();
        red.Should().NotBeEmpty().And.OnlyContain(i => i % frame.Width > 0.65 * frame.Width && i / frame.Width < 0.35 * frame.Height);
    }

    [Fact]
    public void Pixels_must_fill_their_picture() =>
        FluentActions.Invoking(() => new PixelRows("frame", 10, 10, new byte[399])).Should().Throw<ArgumentException>();
}
