using BitMiracle.LibTiff.Classic;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Copies a TIFF byte for byte, and puts the strips or tiles under the bar behind it, packed as the others are.</summary>
/// <remarks>Where strips are not packed the rows under the bar are changed in their places instead.</remarks>
internal sealed class TiffCopy : IBarredCopy
{
    private readonly string _path;

    private TiffCopy(string path, double brightness) => (_path, Brightness) = (path, brightness);

    public double Brightness { get; }

    public IReadOnlyList<string> Changes => [];

    /// <summary>Makes ready.</summary>
    /// <exception cref="NotSupportedException">It is of a kind that cannot be copied as it is.</exception>
    public static TiffCopy Open(string path, double brightness)
    {
        using var tiff = TiffKind.OpenFile(path);
        var kind = TiffKind.Of(tiff);
        return kind.IsPlain ? new TiffCopy(path, brightness) : throw new NotSupportedException(
            $"A TIFF of this kind ({kind.Compression}, {kind.Depth} bits{(kind.HasPlanes ? ", in planes" : "")}) cannot be copied as it is. Save it with whole numbers of up to 16 bits, pixel by pixel, and packed by LZW, deflate or not at all.");
    }

    public void Write(BarStamp stamp, Stream target)
    {
        using (var source = File.OpenRead(_path))
        {
            source.CopyTo(target, 1 << 20);
        }

        using var tiff = TiffKind.OpenFile(_path);
        var kind = TiffKind.Of(tiff);
        var ink = new TiffInk(tiff, kind);
        if (TiffUnpackedStrips.AreIn(kind))
        {
            WriteInPlace(kind, ink, stamp, target);
        }
        else
        {
            Damage.Told(() => WriteBehind(tiff, kind, ink, stamp, target));
        }
    }

    public void Dispose()
    {
        // The file is opened for each way through it and closed again.
    }

    private void WriteInPlace(TiffKind kind, TiffInk ink, BarStamp stamp, Stream target)
    {
        using var strips = TiffUnpackedStrips.Open(_path, kind);
        var row = new byte[TiffSamples.RowBytesOf(kind, kind.Width)];
        for (var y = stamp.Box.Top; y < stamp.Box.Bottom; y++)
        {
            strips.Read(y, row);
            ink.Stamp(row, 0, kind.Width, y, stamp);
            strips.Turn(row);
            target.Position = strips.Start(y);
            target.Write(row);
        }
    }

    private void WriteBehind(Tiff tiff, TiffKind kind, TiffInk ink, BarStamp stamp, Stream target)
    {
        using var file = File.OpenRead(_path);
        var layout = TiffLayout.Read(file);
        target.Seek(0, SeekOrigin.End);
        var parts = kind.IsTiled ? TilesUnder(kind, stamp.Box) : StripsUnder(kind, stamp.Box);
        var moved = new TiffParts(tiff, kind, ink, stamp).Write(parts, layout.IsBigEndian, target);
        new TiffPartTable(layout, kind.IsTiled).Write(moved, target);
    }

    private static StoredBox StripsUnder(TiffKind kind, StoredBox box) => new(0, box.Top / kind.PartRows, 1, ((box.Bottom - 1) / kind.PartRows) + 1);

    private static StoredBox TilesUnder(TiffKind kind, StoredBox box) => new(
        box.Left / kind.PartColumns, box.Top / kind.PartRows, ((box.Right - 1) / kind.PartColumns) + 1, ((box.Bottom - 1) / kind.PartRows) + 1);
}
