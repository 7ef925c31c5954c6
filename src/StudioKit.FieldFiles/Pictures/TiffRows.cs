using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>Rows of a TIFF, strip by strip or one row of tiles at a time.</summary>
internal sealed class TiffRows : IRowDecoder
{
    private readonly Tiff _tiff;
    private readonly int _stripRows;
    private readonly int _tileWidth;
    private readonly int[] _raster;
    private readonly int[] _strip;
    private int _stripFirst;
    private int _stripEnd;
    private int _next;

    private TiffRows(Tiff tiff, int width, int height)
    {
        _tiff = tiff;
        Width = width;
        Height = height;
        _tileWidth = tiff.IsTiled() ? Field(tiff, TiffTag.TILEWIDTH, width) : 0;
        _stripRows = Math.Min(
            Height, tiff.IsTiled() ? Field(tiff, TiffTag.TILELENGTH, height) : Field(tiff, TiffTag.ROWSPERSTRIP, height));
        _strip = new int[checked(Width * _stripRows)];
        _raster = _tileWidth > 0 ? new int[checked(_tileWidth * Field(tiff, TiffTag.TILELENGTH, height))] : _strip;
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Opens a TIFF, or says nothing but that it cannot be read.</summary>
    public static TiffRows? Open(string path, long maximumPixels)
    {
        Tiff.SetErrorHandler(new SilentTiffErrors());
        var tiff = Tiff.Open(path, "r");
        if (tiff is null)
        {
            return null;
        }

        var width = Field(tiff, TiffTag.IMAGEWIDTH, 0);
        var height = Field(tiff, TiffTag.IMAGELENGTH, 0);
        if (width <= 0 || height <= 0 || (long)width * height > maximumPixels || !tiff.RGBAImageOK(out _))
        {
            tiff.Dispose();
            return null;
        }

        // Rows are wanted as stored, the way the other formats give them; the caller turns the result.
        tiff.SetField(TiffTag.ORIENTATION, Orientation.TOPLEFT);
        return new TiffRows(tiff, width, height);
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

    private static int Field(Tiff tiff, TiffTag tag, int otherwise)
    {
        var value = tiff.GetFieldDefaulted(tag) is { Length: > 0 } field ? field[0].ToInt() : otherwise;
        return value <= 0 ? otherwise : value;
    }

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

    /// <summary>Keeps the library from writing to the console; the caller reports in its own words.</summary>
    private sealed class SilentTiffErrors : TiffErrorHandler
    {
        public override void ErrorHandler(Tiff tif, string method, string format, params object[] args)
        {
        }

        public override void ErrorHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
        {
        }

        public override void WarningHandler(Tiff tif, string method, string format, params object[] args)
        {
        }

        public override void WarningHandlerExt(Tiff tif, object clientData, string method, string format, params object[] args)
        {
        }
    }
}
