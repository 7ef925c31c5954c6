using SkiaSharp;

namespace StudioKit.Cli.Tests;

/// <summary>A folder of a test's own, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("studiokit-test-").FullName;

    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Makes a picture of one grey, a PNG or by its name a JPEG, and the folder that it lies in.</summary>
    public string GreyPicture(string name, int width, int height, byte code)
    {
        var path = File(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        using var bitmap = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(new SKColor(code, code, code));
        using var data = bitmap.Encode(System.IO.Path.GetExtension(name) == ".jpg" ? SKEncodedImageFormat.Jpeg : SKEncodedImageFormat.Png, 95);
        System.IO.File.WriteAllBytes(path, data.ToArray());
        return path;
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
