using StudioKit.Field.Pictures;

namespace StudioKit.Field.Tests.Scale;

/// <summary>A millimetre rule drawn across the middle of a picture, beside a dark subject; edges are as soft as a pixel.</summary>
internal static class DrawnRule
{
    public static PixelRows On(int width, int height, double period, double degrees)
    {
        var rgba = new byte[4 * width * height];
        var ticks = (int)(Math.Min(width, height) * 0.9 / period);
        var (sin, cos) = Math.SinCos(-degrees * Math.PI / 180);
        for (var i = 0; i < width * height; i++)
        {
            var (column, row) = (i % width, i / width);
            var (x, y) = (column + 0.5 - (width / 2.0), row + 0.5 - (height / 2.0));
            var ink = Ink((x * cos) + (y * sin), (y * cos) - (x * sin), period, ticks);
            var paper = IsSubject((double)column / width, (double)row / height) ? (R: 90, G: 60, B: 30) : (R: 225, G: 222, B: 214);
            (rgba[4 * i], rgba[(4 * i) + 1], rgba[(4 * i) + 2], rgba[(4 * i) + 3]) = (Mix(paper.R, ink), Mix(paper.G, ink), Mix(paper.B, ink), 255);
        }

        return new PixelRows("rule.png", width, height, rgba);
    }

    // Millimetres, longer at five and ten, as on any rule.
    private static double Ink(double along, double across, double period, int ticks)
    {
        var i = (int)Math.Clamp(Math.Round((along / period) + (ticks / 2.0)), 0, ticks);
        var length = (i % 10 == 0 ? 9 : i % 5 == 0 ? 6.5 : 4.5) * Math.Max(period, 12) / 2;
        var middle = (i - (ticks / 2.0)) * period;
        var tick = Covered(along, middle - (0.09 * period), middle + (0.09 * period)) * Covered(across, 0, length);
        return Math.Max(tick, Covered(along, -ticks / 2.0 * period, ticks / 2.0 * period) * Covered(across, -2, 0));
    }

    private static double Covered(double at, double from, double to) => Math.Clamp(Math.Min(at + 0.5, to) - Math.Max(at - 0.5, from), 0, 1);

    private static bool IsSubject(double u, double v) => (((u - 0.3) / 0.12) * ((u - 0.3) / 0.12)) + (((v - 0.25) / 0.1) * ((v - 0.25) / 0.1)) < 1;

    private static byte Mix(int paper, double ink) => (byte)Math.Round(paper + ((40 - paper) * ink));
}
