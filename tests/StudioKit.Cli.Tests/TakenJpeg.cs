using System.Globalization;
using System.Text;
using SkiaSharp;

namespace StudioKit.Cli.Tests;

/// <summary>Writes a small JPEG that says when it was taken: an Exif block (CIPA DC-008) with DateTimeOriginal alone.</summary>
internal static class TakenJpeg
{
    public static void Write(string path, DateTime taken)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(400, 300, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        var jpeg = data.ToArray();

        // Little-endian; the first directory points to the second, which holds the date behind it.
        byte[] block =
        [
            .. "Exif\0\0II*\0"u8, 8, 0, 0, 0,
            1, 0, 0x69, 0x87, 4, 0, 1, 0, 0, 0, 26, 0, 0, 0, 0, 0, 0, 0,
            1, 0, 0x03, 0x90, 2, 0, 20, 0, 0, 0, 44, 0, 0, 0, 0, 0, 0, 0,
            .. Encoding.ASCII.GetBytes(taken.ToString("yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture)), 0,
        ];
        File.WriteAllBytes(path, [0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(block.Length + 2), .. block, .. jpeg[2..]]);
    }
}
