using SkiaSharp;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Draws a bar and its length, with an edge of the other colour around both so that they stand out from whatever is behind.</summary>
internal static class ScaleBarImage
{
    // An edge of a tenth of the letters' size keeps strokes apart from what is behind without closing their counters.
    private const double EdgeShare = 0.1;

    /// <summary>Width of a label in letters of size 1 [1].</summary>
    public static double LabelWidth(string label)
    {
        using var font = new SKFont(BundledTypeface.Bold, 100);
        return font.MeasureText(Letters(label)) / 100;
    }

    /// <summary>Stored pixels that a bar takes up, its edge included.</summary>
    public static StoredBox Box(SeenPicture seen, ScaleBarPlace place)
    {
        var edge = Edge(place) + 1;
        var (x1, y1) = seen.Stored(place.Box.Left - edge, place.Box.Top - edge);
        var (x2, y2) = seen.Stored(place.Box.Right + edge, place.Box.Bottom + edge);
        return new StoredBox(
            (int)Math.Max(0, Math.Floor(Math.Min(x1, x2))),
            (int)Math.Max(0, Math.Floor(Math.Min(y1, y2))),
            (int)Math.Min(seen.StoredWidth, Math.Ceiling(Math.Max(x1, x2))),
            (int)Math.Min(seen.StoredHeight, Math.Ceiling(Math.Max(y1, y2))));
    }

    /// <summary>Draws the bar.</summary>
    /// <param name="seen">The picture.</param>
    /// <param name="place">Where the bar goes.</param>
    /// <param name="isWhite">Whether bar and letters are white with a black edge; otherwise the other way round.</param>
    public static BarStamp Draw(SeenPicture seen, ScaleBarPlace place, bool isWhite)
    {
        var box = Box(seen, place);
        var ink = Cover(seen, place, box, 0);
        var edge = Cover(seen, place, box, Edge(place));
        for (var i = 0; i < edge.Length; i++)
        {
            edge[i] = (byte)(edge[i] * (255 - ink[i]) / 255);
        }

        return isWhite ? new BarStamp(box, ink, edge) : new BarStamp(box, edge, ink);
    }

    // The typeface has the Greek letter and not the sign for a millionth, which looks the same.
    private static string Letters(string label) => label.Replace('\u00B5', '\u03BC');

    private static double Edge(ScaleBarPlace place) => Math.Max(1, EdgeShare * place.TextSize);

    // How much of each pixel is covered, 255 being all of it, with everything made wider by an edge.
    private static byte[] Cover(SeenPicture seen, ScaleBarPlace place, StoredBox box, double edge)
    {
        using var surface = new SKBitmap(new SKImageInfo(box.Width, box.Height, SKColorType.Alpha8));
        surface.Erase(SKColors.Transparent);
        using (var canvas = new SKCanvas(surface))
        {
            canvas.SetMatrix(StoredMatrix.Of(seen).PostConcat(SKMatrix.CreateTranslation(-box.Left, -box.Top)));
            using var font = new SKFont(BundledTypeface.Bold, (float)place.TextSize) { Hinting = SKFontHinting.None, Subpixel = true };
            using var paint = new SKPaint { IsAntialias = true, Style = edge > 0 ? SKPaintStyle.StrokeAndFill : SKPaintStyle.Fill, StrokeWidth = (float)(2 * edge), StrokeJoin = SKStrokeJoin.Round };
            canvas.DrawRect(new SKRect((float)place.Line.Left, (float)place.Line.Top, (float)place.Line.Right, (float)place.Line.Bottom), paint);
            canvas.DrawText(Letters(place.Bar.Label), (float)place.Line.Middle, (float)place.Baseline, SKTextAlign.Center, font, paint);
        }

        var rows = new byte[box.Width * box.Height];
        for (var row = 0; row < box.Height; row++)
        {
            surface.GetPixelSpan().Slice(row * surface.RowBytes, box.Width).CopyTo(rows.AsSpan(row * box.Width));
        }

        return rows;
    }
}
