using StudioKit.Field;
using StudioKit.Field.Pictures;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>A picture file opened for reading from top to bottom, a few rows at a time.</summary>
/// <remarks>
/// Reading costs two bands of rows in memory, whatever the picture's size, save for progressive JPEGs, which take two bytes a sample, and TIFFs
/// packed in few large strips, which take one packed strip; both have a bound. The numbers come as the file has them: no colour conversion, no turning.
/// </remarks>
public sealed class FramePicture : IRowSource, IDisposable
{
    private const int MostBandRows = 64;
    private const int BandPixels = 2_000_000;
    private readonly IRowDecoder _rows;

    internal FramePicture(string path, PictureFormat format, IRowDecoder rows, FrameSettings settings, Func<Stream> contents)
    {
        Name = path;
        Format = format;
        _rows = rows;
        Settings = settings;
        Contents = contents;
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
    public double BrightnessStep { get; init; }

    /// <summary>Opens the bytes of the picture: the file's, or those of the preview inside a raw file.</summary>
    internal Func<Stream> Contents { get; }

    /// <summary>Opens a picture: JPEG, PNG, TIFF or the preview in a raw file, told apart by their first bytes and not by the name.</summary>
    /// <param name="path">File to open.</param>
    /// <returns>The picture, or why it cannot be read.</returns>
    /// <exception cref="ArgumentException">The path is empty.</exception>
    public static FieldResult<FramePicture> Open(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        try
        {
            return PictureOpening.Open(path);
        }
        catch (InvalidDataException error)
        {
            return new FieldDiagnostic("FLD004", path, $"The picture's header is damaged or cut short. {error.Message}");
        }
        catch (NotSupportedException error)
        {
            return new FieldDiagnostic("FLD006", path, error.Message);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Unopened(path, error);
        }
    }

    private static FieldDiagnostic Unopened(string path, Exception error) => error switch
    {
        _ when Directory.Exists(path) => new("FLD001", path, "This is a folder.", $"Name the pictures in it, e.g. {Path.Combine(path, "*.jpg")}."),
        FileNotFoundException or DirectoryNotFoundException => new("FLD001", path, "There is no such file."),
        _ => new("FLD001", path, $"The file cannot be opened: {WritingFault.Reason(error)}."),
    };

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

}
