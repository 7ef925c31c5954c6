using SkiaSharp;
using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>Draws the bar and its length into a corner of the picture as seen.</summary>
internal static class ScaleBarDrawing
{
    // Shares of the picture's shorter side: legible when the picture is printed 60 mm wide.
    private const float TextShare = 0.035f;
    private const float ThicknessShare = 0.008f;
    private const float MarginShare = 0.03f;

    public static (ScaleBar Bar, bool White) Draw(SKBitmap bitmap, PictureOrientation orientation, ScaleJob job)
    {
        var swapped = orientation >= PictureOrientation.MirroredOnLeft;
        var (width, height) = swapped ? (bitmap.Height, bitmap.Width) : (bitmap.Width, bitmap.Height);
        var bar = ScaleBar.For(job.MetresPerPixel, width);
        var unit = Math.Min(width, height);
        using var font = new SKFont(SKTypeface.Default, Math.Max(8, TextShare * unit));
        var box = Box(job.Corner, width, height, (float)bar.Pixels, font.Size, unit);
        var place = Seen(orientation, bitmap.Width, bitmap.Height);
        var white = IsDark(bitmap, place.MapRect(box));

        using var canvas = new SKCanvas(bitmap);
        canvas.SetMatrix(place);
        using var paint = new SKPaint { Color = white ? SKColors.White : SKColors.Black, IsAntialias = true };
        var thickness = Math.Max(2, ThicknessShare * unit);
        canvas.DrawRect(new SKRect(box.MidX - ((float)bar.Pixels / 2), box.Bottom - thickness, box.MidX + ((float)bar.Pixels / 2), box.Bottom), paint);
        canvas.DrawText(bar.Label, box.MidX, box.Bottom - (1.8f * thickness), SKTextAlign.Center, font, paint);
        return (bar, white);
    }

    private static SKRect Box(ScaleBarCorner corner, int width, int height, float bar, float text, int unit)
    {
        var (margin, boxWidth, boxHeight) = (MarginShare * unit, Math.Max(bar, 4 * text), 1.6f * text);
        var left = corner is ScaleBarCorner.BottomLeft or ScaleBarCorner.TopLeft ? margin : width - margin - boxWidth;
        var top = corner is ScaleBarCorner.TopLeft or ScaleBarCorner.TopRight ? margin : height - margin - boxHeight;
        return SKRect.Create(left, top, boxWidth, boxHeight);
    }

    // From the picture as seen to the rows as stored, for a picture of w by h stored pixels.
    private static SKMatrix Seen(PictureOrientation orientation, float w, float h) => orientation switch
    {
        PictureOrientation.MirroredUpright => new SKMatrix(-1, 0, w, 0, 1, 0, 0, 0, 1),
        PictureOrientation.UpsideDown => new SKMatrix(-1, 0, w, 0, -1, h, 0, 0, 1),
        PictureOrientation.MirroredUpsideDown => new SKMatrix(1, 0, 0, 0, -1, h, 0, 0, 1),
        PictureOrientation.MirroredOnLeft => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        PictureOrientation.TurnClockwise => new SKMatrix(0, 1, 0, -1, 0, h, 0, 0, 1),
        PictureOrientation.MirroredOnRight => new SKMatrix(0, -1, w, -1, 0, h, 0, 0, 1),
        PictureOrientation.TurnAnticlockwise => new SKMatrix(0, -1, w, 1, 0, 0, 0, 0, 1),
        _ => SKMatrix.Identity,
    };

    private static unsafe bool IsDark(SKBitmap bitmap, SKRect box)
    {
        var area = SKRectI.Intersect(SKRectI.Floor(box), new SKRectI(0, 0, bitmap.Width, bitmap.Height));
        var (sum, count) = (0L, 0L);
        for (var y = area.Top; y < area.Bottom; y++)
        {
            var row = new ReadOnlySpan<byte>((byte*)bitmap.GetPixels() + ((long)y * bitmap.RowBytes), bitmap.RowBytes);
            for (var x = area.Left; x < area.Right; x++)
            {
                sum += row[4 * x] + (2 * row[(4 * x) + 1]) + row[(4 * x) + 2];
                count += 4;
            }
        }

        // Black and white stand out equally well where the contrast ratio to both is the same: at 18 % of light, code 118.
        return count > 0 && sum / count < 118;
    }
}
