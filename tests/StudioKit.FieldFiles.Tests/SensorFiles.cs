using SkiaSharp;
using StudioKit.Field.Tests;

namespace StudioKit.FieldFiles.Tests;

/// <summary>Pictures of the model camera as files.</summary>
internal static class SensorFiles
{
    public static SKBitmap Bitmap(this SensorModel sensor)
    {
        var rows = sensor.Expose();
        var bitmap = new SKBitmap(new SKImageInfo(rows.Width, rows.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        rows.Read(band => band.Rgba.CopyTo(bitmap.GetPixelSpan()));
        return bitmap;
    }

    /// <summary>Writes a JPEG of a quality from 1 to 100, or a PNG above it.</summary>
    public static string Save(this SensorModel sensor, string folder, string name, int quality)
    {
        var path = Path.Combine(folder, name);
        using var bitmap = sensor.Bitmap();
        using var data = bitmap.Encode(quality > 100 ? SKEncodedImageFormat.Png : SKEncodedImageFormat.Jpeg, Math.Min(quality, 100));
        File.WriteAllBytes(path, data.ToArray());
        return path;
    }
}
