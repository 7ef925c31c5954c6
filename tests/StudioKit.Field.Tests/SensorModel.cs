using StudioKit.Field.Pictures;

namespace StudioKit.Field.Tests;

/// <summary>A camera for tests: light in, clipped and noisy picture out. Written apart from the code under test.</summary>
internal sealed class SensorModel(int width, int height)
{
    private const double FullWell = 30000;
    private const double ReadNoise = 5;

    /// <summary>Margin over clipping in stops at a place given as shares of width and height.</summary>
    public required Func<double, double, double> Margin { get; init; }

    /// <summary>Light reflected by a subject at a place as a share of saturation; none outside it.</summary>
    public Func<double, double, double?> Subject { get; init; } = (_, _) => null;

    public double RedGain { get; init; } = 1;

    public double BlueGain { get; init; } = 1;

    public int Seed { get; init; } = 1;

    /// <summary>The camera's own curve, before the standard encoding: share of saturation in, share of saturation shown; none for a standard camera.</summary>
    public Func<double, double>? Shoulder { get; init; }

    /// <summary>Share of the background whose margin is zero or more.</summary>
    public double TrueClippedShare()
    {
        var (clipped, background) = (0, 0);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (u, v) = Place(x, y);
                background += Subject(u, v) is null ? 1 : 0;
                clipped += Subject(u, v) is null && Margin(u, v) >= 0 ? 1 : 0;
            }
        }

        return (double)clipped / background;
    }

    public PixelRows Expose(string name = "frame.png")
    {
        var random = new Random(Seed);
        var curve = Shoulder is { } shoulder ? [.. Enumerable.Range(0, 65536).Select(i => Curve[(int)Math.Round(Math.Clamp(shoulder(i / 65535.0), 0, 1) * 65535)])] : Curve;
        var rgba = new byte[4 * width * height];
        for (var i = 0; i < width * height; i++)
        {
            var (u, v) = Place(i % width, i / width);
            var light = Subject(u, v) ?? Math.Pow(2, Margin(u, v));
            rgba[4 * i] = Code(light * RedGain, random, curve);
            rgba[(4 * i) + 1] = Code(light, random, curve);
            rgba[(4 * i) + 2] = Code(light * BlueGain, random, curve);
            rgba[(4 * i) + 3] = 255;
        }

        return new PixelRows(name, width, height, rgba);
    }

    private static byte Code(double light, Random random, byte[] curve)
    {
        var electrons = light * FullWell;
        electrons += Math.Sqrt(electrons + (ReadNoise * ReadNoise)) * Noise[random.Next(Noise.Length)];
        return curve[(int)Math.Round(Math.Clamp(electrons / FullWell, 0, 1) * (Curve.Length - 1))];
    }

    // The sRGB curve (IEC 61966-2-1) at 16 bits, and a store of normal deviates: making test pictures would take most of the time otherwise.
    private static readonly byte[] Curve = [.. Enumerable.Range(0, 65536).Select(i => i / 65535.0).Select(light =>
        (byte)Math.Round(255 * (light <= 0.0031308 ? 12.92 * light : (1.055 * Math.Pow(light, 1 / 2.4)) - 0.055)))];

    private static readonly double[] Noise = MakeNoise();

    private static double[] MakeNoise()
    {
        var random = new Random(20260509);
        return [.. Enumerable.Range(0, 1 << 16).Select(_ =>
            Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble()))];
    }

    private (double U, double V) Place(int x, int y) => ((x + 0.5) / width, (y + 0.5) / height);
}
