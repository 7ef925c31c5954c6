using BenchmarkDotNet.Attributes;
using SkiaSharp;
using StudioKit.FieldFiles.Frames;

namespace StudioKit.Benchmarks;

/// <summary>One 45-megapixel JPEG test frame against its bare decode: at most 1.3 times, and under twice its decoded size in memory.</summary>
[MemoryDiagnoser]
[ShortRunJob]
public class TestFrameBenchmarks
{
    private const int Width = 8192;
    private const int Height = 5464;
    private readonly string _path = Path.Combine(Path.GetTempPath(), "studiokit-benchmark-frame.jpg");

    /// <summary>Makes the frame: a panel that falls off to its corners, noise, and a dark subject in the middle.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var random = new Random(1);
        using var bitmap = new SKBitmap(new SKImageInfo(Width, Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        var pixels = bitmap.GetPixelSpan();
        for (var i = 0; i < Width * Height; i++)
        {
            var (u, v) = (((double)(i % Width) / Width) - 0.5, ((double)(i / Width) / Height) - 0.5);
            var level = (u * u) + (v * v) < 0.04 ? 60 + (40 * Math.Sin(i * 0.01)) : 300 - (180 * ((u * u) + (v * v)));
            var code = (byte)Math.Clamp(level + random.Next(-4, 5), 0, 255);
            (pixels[4 * i], pixels[(4 * i) + 1], pixels[(4 * i) + 2], pixels[(4 * i) + 3]) = (code, code, code, 255);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 92);
        File.WriteAllBytes(_path, data.ToArray());
    }

    /// <summary>Takes the frame away.</summary>
    [GlobalCleanup]
    public void Cleanup() => File.Delete(_path);

    /// <summary>Decoding alone, into memory.</summary>
    [Benchmark(Baseline = true)]
    public int BareDecode()
    {
        using var bitmap = SKBitmap.Decode(_path);
        return bitmap.Width;
    }

    /// <summary>Decoding and analysing.</summary>
    [Benchmark]
    public double Analyse() => TestFrameFile.Analyse(_path).Value!.ClippedShare;
}
