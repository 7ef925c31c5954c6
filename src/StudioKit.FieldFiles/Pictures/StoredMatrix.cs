using SkiaSharp;
using StudioKit.Field.Pictures;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>From a picture as seen to its rows as stored, for a canvas.</summary>
internal static class StoredMatrix
{
    public static SKMatrix Of(SeenPicture seen)
    {
        var ((x, y), right, down) = (seen.Stored(0, 0), seen.Stored(1, 0), seen.Stored(0, 1));
        return new SKMatrix((float)(right.X - x), (float)(down.X - x), (float)x, (float)(right.Y - y), (float)(down.Y - y), (float)y, 0, 0, 1);
    }
}
