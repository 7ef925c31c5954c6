using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Strips that are not packed: each row is read from where it lies, however large the strip.</summary>
internal sealed class TiffUnpackedStrips : IDisposable
{
    private readonly FileStream _file;
    private readonly TiffKind _kind;
    private readonly long[] _starts;
    private readonly bool _isTurned;

    private TiffUnpackedStrips(FileStream file, TiffKind kind)
    {
        (_file, _kind) = (file, kind);
        var layout = TiffLayout.Read(file);
        _starts = layout.Values(layout.Directories[0], TiffTags.StripOffsets);
        _isTurned = kind.Depth == 16 && layout.IsBigEndian;
    }

    /// <summary>Whether a TIFF keeps its pixels so.</summary>
    public static bool AreIn(TiffKind kind) => kind is { IsTiled: false, Compression: Compression.NONE, Depth: 8 or 16 };

    public static TiffUnpackedStrips Open(string path, TiffKind kind)
    {
        var file = File.OpenRead(path);
        try
        {
            return new TiffUnpackedStrips(file, kind);
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }

    /// <summary>Where a row begins in the file.</summary>
    /// <exception cref="InvalidDataException">The file does not say.</exception>
    public long Start(int row) => row / _kind.PartRows < _starts.Length
        ? _starts[row / _kind.PartRows] + ((long)(row % _kind.PartRows) * TiffSamples.RowBytesOf(_kind, _kind.Width))
        : throw new InvalidDataException("The TIFF does not say where all of its rows are.");

    /// <summary>Reads a row.</summary>
    /// <exception cref="InvalidDataException">The file ends before it.</exception>
    public void Read(int row, byte[] into)
    {
        var start = Start(row);
        if (start < 0 || start > _file.Length - into.Length)
        {
            throw new InvalidDataException("The TIFF's data end too early.");
        }

        _file.Position = start;
        _file.ReadExactly(into);
        Turn(into);
    }

    /// <summary>Turns the two bytes of each sample about, where the file has the high one first.</summary>
    public void Turn(byte[] row)
    {
        for (var i = 0; _isTurned && i + 1 < row.Length; i += 2)
        {
            (row[i], row[i + 1]) = (row[i + 1], row[i]);
        }
    }

    public void Dispose() => _file.Dispose();
}
