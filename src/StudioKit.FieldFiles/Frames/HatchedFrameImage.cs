using System.Runtime.InteropServices;
using SkiaSharp;
using StudioKit.Field.Analysis;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Frames;

/// <summary>The picture of a frame with what is not white hatched, as a file.</summary>
public static class HatchedFrameImage
{
    /// <summary>Draws the picture.</summary>
    /// <param name="frame">The frame.</param>
    /// <returns>A PNG file.</returns>
    public static byte[] Png(HatchedFrame frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        using var bitmap = new SKBitmap(new SKImageInfo(frame.Width, frame.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        Marshal.Copy(frame.Rgba, 0, bitmap.GetPixels(), frame.Rgba.Length);
        using (var canvas = new SKCanvas(bitmap))
        {
            DrawLabels(canvas, frame);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static void DrawLabels(SKCanvas canvas, HatchedFrame frame)
    {
        using var font = new SKFont(BundledTypeface.Bold, 14);
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        using var paper = new SKPaint { Color = SKColors.White.WithAlpha(220) };
        foreach (var label in frame.Labels)
        {
            var half = (font.MeasureText(label.Text) / 2) + 4;
            var x = Math.Clamp((float)label.Middle, half, Math.Max(half, frame.Width - half));
            var y = (float)label.Baseline;
            canvas.DrawRect(x - half, y - 16, 2 * half, 22, paper);
            canvas.DrawText(label.Text, x, y, SKTextAlign.Center, font, ink);
        }
    }
}
