using StudioKit.Field.Scale;

namespace StudioKit.Field.Tests.Scale;

public sealed class ScaleBarTests
{
    [Theory]
    [InlineData(5.625, 8000, "1 cm")]
    [InlineData(1.0, 8000, "2 mm")]
    [InlineData(0.2, 4000, "200 µm")]
    [InlineData(100, 6000, "10 cm")]
    public void Bars_have_a_round_length(double micrometresPerPixel, int width, string label) =>
        ScaleBar.For(micrometresPerPixel * 1e-6, width).Label.Should().Be(label);

    [Fact]
    public void A_bar_is_a_tenth_to_a_quarter_of_the_picture_and_true_to_scale() =>
        Gen.Select(Gen.Double[-7, -3], Gen.Int[100, 20000]).Sample((exponent, width) =>
        {
            var scale = Math.Pow(10, exponent);
            var bar = ScaleBar.For(scale, width);
            return bar.Pixels <= 0.25 * width * (1 + 1e-9) && bar.Pixels > 0.0999 * width && Math.Abs((bar.Pixels * scale / bar.Length) - 1) < 1e-9;
        });

    [Theory]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void A_scale_that_is_none_is_refused(double scale) =>
        FluentActions.Invoking(() => ScaleBar.For(scale, 1000)).Should().Throw<ArgumentOutOfRangeException>();
}
