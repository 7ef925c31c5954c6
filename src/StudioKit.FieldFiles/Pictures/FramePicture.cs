using SkiaSharp;
using StudioKit.Field;
using StudioKit.Field.Pictures;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>A picture file opened for reading from top to bottom, a few rows at a time.</summary>
/// <remarks>
/// Reading costs two bands of rows in memory, whatever the picture's size, save for interlaced PNGs and TIFFs of one single strip,
/// which take their decoded size. The numbers come as the file has them: no colour conversion, no turning.
/// </remarks>
public sealed class FramePicture : IRowSource, IDisposable
{
    // Medium-format stitching ends well below; above it a header is more likely damaged or hostile than true.
    private const long MaximumPixels = 500_000_000;
    private const int MostBandRows = 64;
    private const int BandPixels = 2_000_000;
    private readonly IRowDecoder _rows;

    private FramePicture(string path, PictureFormat format, IRowDecoder rows, FrameSettings settings, double brightnessStep = 0)
    {
        BrightnessStep = brightnessStep;
        Name = path;
        Format = format;
        _rows = rows;
        Settings = settings;
    }

    /// <summary>File it is read from.</summary>
    public string Name { get; }

    /// <summary>How the file is coded.</summary>
    public PictureFormat Format { get; }

    /// <summary>What the file says of how it was taken.</summary>
    public FrameSettings Settings { get; }

    /// <summary>Pixels in a stored row [1].</summary>
    public int Width => _rows.Width;

    /// <summary>Stored rows [1].</summary>
    public int Height => _rows.Height;

    /// <summary>Codes of 255 that lossy compression makes one of [1]; 0 where the file is lossless.</summary>
    public double BrightnessStep { get; }

    /// <summary>Opens a picture: JPEG, PNG or TIFF, told apart by their first bytes and not by the name.</summary>
    /// <param name="path">File to open.</param>
    /// <returns>The picture, or why it cannot be read.</returns>
    /// <exception cref="ArgumentException">The path is empty.</exception>
    public static FieldResult<FramePicture> Open(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (ReadFirstBytes(path, out var fault) is not { } head)
        {
            return fault!;
        }

        var format = Recognise(head);
        return format switch
        {
            null => new FieldDiagnostic("FLD003", path, "This is not a JPEG, PNG or TIFF picture."),
            PictureFormat.Tiff => OpenTiff(path),
            _ => OpenCodec(path, format.Value),
        };
    }

    /// <summary>Opens a picture for one use of its rows.</summary>
    /// <typeparam name="T">What is made of them.</typeparam>
    /// <param name="path">File to open.</param>
    /// <param name="use">Makes it.</param>
    /// <returns>What was made, or why the picture cannot be read.</returns>
    public static FieldResult<T> With<T>(string path, Func<FramePicture, FieldResult<T>> use)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(use);
        var opened = Open(path);
        using var picture = opened.Value;
        return picture is null ? FieldResult<T>.Refused(opened.Diagnostics) : use(picture);
    }

    /// <summary>Decodes the picture once, handing each band to a visitor while the next one is being decoded.</summary>
    /// <param name="visit">Called for one band at a time, from top to bottom, on another thread.</param>
    /// <returns>None, or where and why decoding stopped.</returns>
    /// <exception cref="ArgumentNullException">There is no visitor.</exception>
    public FieldDiagnostic? Read(Action<PictureBand> visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var bandRows = Math.Clamp(BandPixels / Width, 1, MostBandRows);
        var (filling, visiting) = (new byte[bandRows * Width * 4], new byte[bandRows * Width * 4]);
        var visitor = Task.CompletedTask;
        for (var row = 0; row < Height;)
        {
            var wanted = Math.Min(bandRows, Height - row);
            var got = _rows.Read(filling, wanted);
            visitor.GetAwaiter().GetResult();
            (filling, visiting) = (visiting, filling);
            var band = new PictureBand(visiting, Width, row, got);
            visitor = Task.Run(() => visit(band));
            row += got;
            if (got < wanted)
            {
                visitor.GetAwaiter().GetResult();
                return new FieldDiagnostic(
                    "FLD005", Name, $"The picture breaks off after {row} of its {Height} rows.", "Copy it from the card again.");
            }
        }

        visitor.GetAwaiter().GetResult();
        return null;
    }

    /// <inheritdoc/>
    public void Dispose() => _rows.Dispose();

    private static byte[]? ReadFirstBytes(string path, out FieldDiagnostic? fault)
    {
        try
        {
            using var stream = File.OpenRead(path);
            var head = new byte[8];
            var count = stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
            fault = count == 0 ? new FieldDiagnostic("FLD002", path, "The file is empty.") : null;
            return count == 0 ? null : head;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            fault = new FieldDiagnostic("FLD001", path, "The file cannot be opened: " + error.Message);
            return null;
        }
    }

    private static PictureFormat? Recognise(byte[] head) => head switch
    {
        [0xFF, 0xD8, 0xFF, ..] => PictureFormat.Jpeg,
        [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => PictureFormat.Png,
        [(byte)'I', (byte)'I', 42 or 43, 0, ..] or [(byte)'M', (byte)'M', 0, 42 or 43, ..] => PictureFormat.Tiff,
        _ => null,
    };

    private static FieldResult<FramePicture> OpenCodec(string path, PictureFormat format)
    {
        var codec = SKCodec.Create(path);
        if (codec is null)
        {
            return new FieldDiagnostic("FLD004", path, "The picture's header is damaged or cut short.");
        }

        if ((long)codec.Info.Width * codec.Info.Height > MaximumPixels)
        {
            codec.Dispose();
            return new FieldDiagnostic("FLD006", path, $"The picture claims more than {MaximumPixels / 1_000_000} megapixels.");
        }

        var settings = FrameSettingsReader.Read(path);
        return new FramePicture(path, format, new CodecRows(codec), settings, format == PictureFormat.Jpeg ? ReadBrightnessStep(path) : 0);
    }

    private static double ReadBrightnessStep(string path)
    {
        using var stream = File.OpenRead(path);
        return JpegSegment.BrightnessStep(JpegSegment.ReadHeader(stream));
    }

    private static FieldResult<FramePicture> OpenTiff(string path) =>
        TiffRows.Open(path, MaximumPixels) is { } rows
            ? new FramePicture(path, PictureFormat.Tiff, rows, FrameSettingsReader.Read(path))
            : new FieldDiagnostic("FLD004", path, "The TIFF is damaged, too large or of a kind that cannot be read here.");
}
