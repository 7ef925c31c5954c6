using SkiaSharp;
using StudioKit.Field.Scale;

namespace StudioKit.Field.Tests.Scale;

public sealed class MillimetreRuleTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    /// <summary>The period is the one the rule was drawn with; 0.3 % is what the job asks for.</summary>
    [Theory]
    [InlineData(23.7, 0)]
    [InlineData(23.7, 90)]
    [InlineData(31.4, 3.3)]
    [InlineData(17.2, 41)]
    [InlineData(52.9, 118)]
    [InlineData(9.3, 175)]
    public void Period_of_a_drawn_rule_is_found_at_any_rotation(double period, double degrees)
    {
        var measured = MillimetreRule.Measure(Draw(1300, 900, period, degrees)).Value!;

        measured.PeriodPixels.Should().BeApproximately(period, 0.003 * period);
        measured.MicrometresPerPixel.Should().BeApproximately(1000 / period, 3 / period);
        var off = Math.Abs(measured.AngleDegrees - degrees) % 180;

        // Two and a half degrees stretch the period by a thousandth, a third of what is allowed.
        Math.Min(off, 180 - off).Should().BeLessThan(2.5);
    }

    [Fact]
    public void A_rule_in_a_large_picture_is_measured_in_pixels_of_the_file() =>
        MillimetreRule.Measure(Draw(3600, 2400, 77.3, 12)).Value!.PeriodPixels.Should().BeApproximately(77.3, 0.003 * 77.3);

    [Fact]
    public void A_picture_without_a_rule_is_refused()
    {
        var sensor = new SensorModel(900, 600) { Margin = (u, v) => -0.5 - u + Math.Sin(9 * v * v) };

        MillimetreRule.Measure(sensor.Save(_scratch.Path, "plain.jpg", 90)).Diagnostics
            .Should().ContainSingle().Which.Code.Should().Be("FLD301");
    }

    private string Draw(int width, int height, double period, double degrees)
    {
        using var bitmap = new SKBitmap(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque);
        using var canvas = new SKCanvas(bitmap);
        using var ink = new SKPaint { Color = new SKColor(40, 40, 40), IsAntialias = true };
        canvas.Clear(new SKColor(225, 222, 214));
        using var subject = new SKPaint { Color = new SKColor(90, 60, 30), IsAntialias = true };
        canvas.DrawOval(width * 0.3f, height * 0.25f, width * 0.12f, height * 0.1f, subject);

        canvas.Translate(width / 2f, height / 2f);
        canvas.RotateDegrees((float)-degrees);
        var p = (float)period;
        var ticks = (int)(Math.Min(width, height) * 0.9 / period);
        for (var i = 0; i <= ticks; i++)
        {
            // Millimetres, longer at five and ten, as on any rule.
            var length = (i % 10 == 0 ? 9 : i % 5 == 0 ? 6.5f : 4.5f) * Math.Max(p, 12) / 2;
            var x = (i - (ticks / 2f)) * p;
            canvas.DrawRect(x - (0.09f * p), 0, 0.18f * p, length, ink);
        }

        canvas.DrawRect(-ticks / 2f * p, -2, ticks * p, 2, ink);
        canvas.Flush();
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 88);
        var path = _scratch.File("rule.jpg");
        File.WriteAllBytes(path, data.ToArray());
        return path;
    }
}
