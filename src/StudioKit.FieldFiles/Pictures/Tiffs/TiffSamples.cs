using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Rows of a plain TIFF's samples, from top to bottom; of two bytes the low one comes first.</summary>
internal sealed class TiffSamples : IDisposable
{
    private const long MostBytes = 256_000_000;
    private readonly Tiff _tiff;
    private readonly TiffKind _kind;
    private readonly TiffUnpackedStrips? _unpacked;
    private readonly byte[] _tile = [];
    private readonly byte[] _tiles = [];
    private int _next;

    private TiffSamples(Tiff tiff, TiffKind kind, TiffUnpackedStrips? unpacked)
    {
        (_tiff, _kind, _unpacked) = (tiff, kind, unpacked);
        RowBytes = RowBytesOf(kind, kind.Width);
        if (kind.IsTiled)
        {
            _tile = new byte[tiff.TileSize()];
            _tiles = new byte[checked(RowBytes * kind.PartRows)];
        }
    }

    /// <summary>Bytes of a row.</summary>
    public int RowBytes { get; }

    /// <summary>Opens the samples.</summary>
    /// <exception cref="NotSupportedException">A strip or a row of tiles takes too much memory.</exception>
    public static TiffSamples Open(string path, Tiff tiff, TiffKind kind)
    {
        if (TiffUnpackedStrips.AreIn(kind))
        {
            return new TiffSamples(tiff, kind, TiffUnpackedStrips.Open(path, kind));
        }

        // Of a packed strip the library holds the packed bytes; of tiles a row of them is held here.
        var packed = tiff.GetField(kind.IsTiled ? TiffTag.TILEBYTECOUNTS : TiffTag.STRIPBYTECOUNTS) is [{ } counts, ..] ? counts.TolongArray()?.DefaultIfEmpty(0).Max() ?? 0 : 0;
        var held = kind.IsTiled ? ((long)RowBytesOf(kind, kind.Width) * kind.PartRows) + packed : packed;
        return held <= MostBytes
            ? new TiffSamples(tiff, kind, null)
            : throw new NotSupportedException(
                $"One strip or row of tiles of the TIFF takes {held / 1_000_000} MB, more than the {MostBytes / 1_000_000} MB that are read at once. Save it with smaller strips, or unpacked.");
    }

    public static int RowBytesOf(TiffKind kind, int columns) => checked((int)((((long)columns * kind.Samples * kind.Depth) + 7) / 8));

    /// <summary>Reads the next row.</summary>
    /// <exception cref="InvalidDataException">It is damaged or missing.</exception>
    public void Read(byte[] row)
    {
        if (_unpacked is not null)
        {
            _unpacked.Read(_next, row);
        }
        else if (_kind.IsTiled)
        {
            ReadFromTiles(row);
        }
        else
        {
            ReadPacked(row);
        }

        _next++;
    }

    public void Dispose()
    {
        _unpacked?.Dispose();
        _tiff.Dispose();
    }

    private void ReadPacked(byte[] row)
    {
        try
        {
            Check(_tiff.ReadScanline(row, _next));
        }
        catch (Exception error) when (Damage.IsDamage(error))
        {
            throw new InvalidDataException("The TIFF's data are damaged.", error);
        }
    }

    private static void Check(bool isRead)
    {
        if (!isRead)
        {
            throw new InvalidDataException("The TIFF's data are damaged.");
        }
    }

    private void ReadFromTiles(byte[] row)
    {
        if (_next % _kind.PartRows == 0)
        {
            ReadTiles();
        }

        _tiles.AsSpan(_next % _kind.PartRows * RowBytes, RowBytes).CopyTo(row);
    }

    // Tiles are whole even where they stick out over the picture's edge; their columns are a multiple of sixteen, so that rows begin with whole bytes.
    private void ReadTiles()
    {
        var tileBytes = RowBytesOf(_kind, _kind.PartColumns);
        for (var column = 0; column < _kind.Width; column += _kind.PartColumns)
        {
            Check(Damage.Told(() => _tiff.ReadTile(_tile, 0, column, _next, 0, 0)) >= 0);
            var start = RowBytesOf(_kind, column);
            var inside = Math.Min(tileBytes, RowBytes - start);
            for (var row = 0; row < _kind.PartRows; row++)
            {
                _tile.AsSpan(row * tileBytes, inside).CopyTo(_tiles.AsSpan((row * RowBytes) + start));
            }
        }
    }
}
