using SkiaSharp;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Draws the bar and its length into a corner of the picture as seen.</summary>
internal static class ScaleBarImage
{
    public static (ScaleBar Bar, bool White) Draw(SKBitmap bitmap, PictureOrientation orientation, ScaleJob job)
    {
        var seen = new SeenPicture(orientation, bitmap.Width, bitmap.Height);
        var place = ScaleBarPlace.For(seen, job.Scale.MetresPerPixel, job.Corner);
        var white = place.IsOnDark(seen, bitmap.GetPixelSpan());

        using var canvas = new SKCanvas(bitmap);
        canvas.SetMatrix(StoredMatrix.Of(seen));
        using var font = new SKFont(SKTypeface.Default, (float)place.TextSize);
        using var paint = new SKPaint { Color = white ? SKColors.White : SKColors.Black, IsAntialias = true };
        canvas.DrawRect(new SKRect((float)place.Line.Left, (float)place.Line.Top, (float)place.Line.Right, (float)place.Line.Bottom), paint);
        canvas.DrawText(place.Bar.Label, (float)place.Line.Middle, (float)place.Baseline, SKTextAlign.Center, font, paint);
        return (place.Bar, white);
    }
}
