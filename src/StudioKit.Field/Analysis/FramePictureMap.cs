using SkiaSharp;

namespace StudioKit.Field.Analysis;

/// <summary>Draws a frame small, with the background that is not white hatched and the regions that miss most named.</summary>
public static class FramePictureMap
{
    private const int Enlarged = 2;
    private const int HatchSpacing = 8;

    /// <summary>Draws the picture.</summary>
    /// <param name="analysis">The frame.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] Png(FrameAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var small = analysis.Thumbnail;
        using var bitmap = new SKBitmap(new SKImageInfo(small.Width * Enlarged, small.Height * Enlarged, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Pixels = Pixels(small);
        using (var canvas = new SKCanvas(bitmap))
        {
            DrawNames(canvas, analysis, bitmap.Width, bitmap.Height);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    // Hatching tells black on white print what colour tells the screen.
    private static SKColor[] Pixels(FrameThumbnail small)
    {
        var width = small.Width * Enlarged;
        var pixels = new SKColor[width * small.Height * Enlarged];
        for (var i = 0; i < pixels.Length; i++)
        {
            var (y, x) = Math.DivRem(i, width);
            var point = (y / Enlarged * small.Width) + (x / Enlarged);
            pixels[i] = small.Unclipped[point] && (x + y) % HatchSpacing < 2
                ? new SKColor(200, 0, 0)
                : new SKColor(small.Rgb[3 * point], small.Rgb[(3 * point) + 1], small.Rgb[(3 * point) + 2]);
        }

        return pixels;
    }

    private static void DrawNames(SKCanvas canvas, FrameAnalysis analysis, int width, int height)
    {
        using var font = new SKFont(SKTypeface.Default, 14);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        using var paper = new SKPaint { Color = SKColors.White.WithAlpha(220) };
        foreach (var (region, i) in analysis.Regions.Select((region, i) => (region, i)).Where(entry => entry.region.ClippedShare < 0.99 && entry.region.StopsMissing > 0))
        {
            var text = FormattableString.Invariant($"{region.Name}: {region.StopsMissing:0.0} stop under");
            var half = (font.MeasureText(text) / 2) + 4;
            var x = Math.Clamp((((i % 3) + 0.5f) * width) / 3, half, Math.Max(half, width - half));
            var y = (((i / 3) + 0.5f) * height) / 3;
            canvas.DrawRect(x - half, y - 16, 2 * half, 22, paper);
            canvas.DrawText(text, x, y, SKTextAlign.Center, font, ink);
        }
    }
}
