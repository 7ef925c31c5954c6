using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>How the pixels of a TIFF are kept.</summary>
internal sealed record TiffKind
{
    // What the library packs and unpacks without loss.
    private static readonly Compression[] Lossless =
        [Compression.NONE, Compression.LZW, Compression.ADOBE_DEFLATE, Compression.DEFLATE, Compression.PACKBITS];

    // Only these know differences of samples.
    private static readonly Compression[] Packed = [Compression.LZW, Compression.ADOBE_DEFLATE, Compression.DEFLATE];

    public required int Width { get; init; }

    public required int Height { get; init; }

    public required int Samples { get; init; }

    public required int Depth { get; init; }

    public required Photometric Colour { get; init; }

    public required Compression Compression { get; init; }

    public required bool IsTiled { get; init; }

    /// <summary>Rows of a strip or tile.</summary>
    public required int PartRows { get; init; }

    /// <summary>Columns of a strip or tile.</summary>
    public required int PartColumns { get; init; }

    public required bool HasPlanes { get; init; }

    public required bool HasWholeNumbers { get; init; }

    /// <summary>Whether each sample is kept as what it differs from its neighbour to the left.</summary>
    public required bool IsPredicted { get; init; }

    /// <summary>Whether samples are plain numbers of one or two bytes or less, packed without loss and pixel by pixel.</summary>
    public bool IsPlain => HasWholeNumbers && !HasPlanes && Depth is 1 or 2 or 4 or 8 or 16 && Lossless.Contains(Compression)
        && Colour is Photometric.MINISBLACK or Photometric.MINISWHITE or Photometric.RGB or Photometric.PALETTE or Photometric.SEPARATED
        && Samples >= (Colour is Photometric.RGB ? 3 : Colour is Photometric.SEPARATED ? 4 : 1) && Samples <= 8;

    /// <summary>Greatest value of a sample.</summary>
    public int Most => (1 << Depth) - 1;

    /// <summary>Opens a file for the library, with its strips as they are: it would cut large ones up, so that they could not be found in the file again.</summary>
    /// <exception cref="InvalidDataException">The file is damaged.</exception>
    public static Tiff OpenFile(string path)
    {
        SilentTiffErrors.Use();

        // On a stream of our own: given a name, the library could just as well open it for writing.
        var stream = File.OpenRead(path);
        try
        {
            return Damage.Told(() => Tiff.ClientOpen(path, "rc", stream, new TiffStream())) ?? throw new InvalidDataException("The TIFF's header is damaged.");
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    /// <summary>How the first picture of a file is kept.</summary>
    public static TiffKind Of(Tiff tiff)
    {
        var (width, height, isTiled) = (Field(tiff, TiffTag.IMAGEWIDTH, 0), Field(tiff, TiffTag.IMAGELENGTH, 0), tiff.IsTiled());
        return new TiffKind
        {
            Width = width,
            Height = height,
            Samples = Field(tiff, TiffTag.SAMPLESPERPIXEL, 1),
            Depth = Field(tiff, TiffTag.BITSPERSAMPLE, 1),
            Colour = (Photometric)(tiff.GetField(TiffTag.PHOTOMETRIC) is { Length: > 0 } colour ? colour[0].ToInt() : -1),
            Compression = (Compression)Field(tiff, TiffTag.COMPRESSION, 1),
            IsTiled = isTiled,
            PartRows = isTiled ? Field(tiff, TiffTag.TILELENGTH, height) : Math.Min(height, Field(tiff, TiffTag.ROWSPERSTRIP, height)),
            PartColumns = isTiled ? Field(tiff, TiffTag.TILEWIDTH, width) : width,
            HasPlanes = Field(tiff, TiffTag.PLANARCONFIG, 1) == (int)PlanarConfig.SEPARATE && Field(tiff, TiffTag.SAMPLESPERPIXEL, 1) > 1,
            IsPredicted = Field(tiff, TiffTag.PREDICTOR, 1) == (int)Predictor.HORIZONTAL && Packed.Contains((Compression)Field(tiff, TiffTag.COMPRESSION, 1)),
            HasWholeNumbers = Field(tiff, TiffTag.SAMPLEFORMAT, 1) == (int)SampleFormat.UINT,
        };
    }

    private static int Field(Tiff tiff, TiffTag tag, int otherwise)
    {
        var value = tiff.GetFieldDefaulted(tag) is { Length: > 0 } field ? field[0].ToInt() : otherwise;
        return value <= 0 ? otherwise : value;
    }
}
