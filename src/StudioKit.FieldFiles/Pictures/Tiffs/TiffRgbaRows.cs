using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Rows of a TIFF of any kind that the library turns into eight-bit colours, strip by strip or one row of tiles at a time.</summary>
internal sealed class TiffRgbaRows : IRowDecoder
{
    // The library takes about three times the four bytes a pixel while it unpacks them.
    private const long MostPixels = 32_000_000;
    private readonly Tiff _tiff;
    private readonly int _stripRows;
    private readonly int _tileWidth;
    private readonly int[] _raster;
    private readonly int[] _strip;
    private int _stripFirst;
    private int _stripEnd;
    private int _next;

    private TiffRgbaRows(Tiff tiff, TiffKind kind)
    {
        _tiff = tiff;
        (Width, Height, _stripRows) = (kind.Width, kind.Height, Math.Min(kind.Height, kind.PartRows));
        _tileWidth = kind.IsTiled ? kind.PartColumns : 0;
        _strip = new int[checked(Width * _stripRows)];
        _raster = kind.IsTiled ? new int[checked(_tileWidth * kind.PartRows)] : _strip;
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Opens the rows of a TIFF.</summary>
    /// <exception cref="NotSupportedException">It is of a kind that cannot be read, or its strips take too much memory.</exception>
    public static TiffRgbaRows Open(Tiff tiff, TiffKind kind)
    {
        var pixels = ((long)kind.Width * Math.Min(kind.Height, kind.PartRows)) + (kind.IsTiled ? (long)kind.PartColumns * kind.PartRows : 0);
        if (!tiff.RGBAImageOK(out _))
        {
            throw new NotSupportedException("The TIFF is of a kind that cannot be read here, e.g. with broken numbers or a packing of its own. Save it with whole numbers of up to 16 bits first.");
        }

        if (pixels > MostPixels)
        {
            throw new NotSupportedException(
                $"The TIFF keeps {pixels / 1_000_000} megapixels in one strip, more than the {MostPixels / 1_000_000} that a TIFF of its kind may be read with. Save it with smaller strips, and packed by LZW or not at all.");
        }

        // Rows are wanted as stored, the way the other formats give them; the caller turns the result.
        tiff.SetField(TiffTag.ORIENTATION, Orientation.TOPLEFT);
        return new TiffRgbaRows(tiff, kind);
    }

    public int Read(byte[] rgba, int rows)
    {
        var done = 0;
        while (done < rows && _next < Height && (_next < _stripEnd || ReadStrip()))
        {
            WriteRow(rgba.AsSpan(done * Width * 4, Width * 4));
            done++;
            _next++;
        }

        return done;
    }

    public void Dispose() => _tiff.Dispose();

    private bool ReadStrip()
    {
        _stripFirst = _next;
        _stripEnd = Math.Min(_next + _stripRows, Height);
        return _tileWidth > 0 ? ReadTiles() : _tiff.ReadRGBAStrip(_stripFirst, _raster);
    }

    // A tile comes bottom row first and always whole, even where it sticks out over the picture's edge.
    private bool ReadTiles()
    {
        var tileRows = _raster.Length / _tileWidth;
        for (var column = 0; column < Width; column += _tileWidth)
        {
            if (!_tiff.ReadRGBATile(column, _stripFirst, _raster))
            {
                return false;
            }

            var inside = Math.Min(_tileWidth, Width - column);
            var rows = _stripEnd - _stripFirst;
            for (var row = 0; row < rows; row++)
            {
                Array.Copy(_raster, (tileRows - 1 - row) * _tileWidth, _strip, ((rows - 1 - row) * Width) + column, inside);
            }
        }

        return true;
    }

    private void WriteRow(Span<byte> target)
    {
        // A strip comes bottom row first.
        var source = _strip.AsSpan((_stripEnd - 1 - _next) * Width, Width);
        for (var x = 0; x < Width; x++)
        {
            target[4 * x] = (byte)Tiff.GetR(source[x]);
            target[(4 * x) + 1] = (byte)Tiff.GetG(source[x]);
            target[(4 * x) + 2] = (byte)Tiff.GetB(source[x]);
            target[(4 * x) + 3] = 255;
        }
    }
}
