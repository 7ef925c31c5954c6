using BitMiracle.LibTiff.Classic;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Strips or tiles with the bar on them, written as a small TIFF of their own behind the copy, whose directory then points there.</summary>
internal sealed class TiffParts(Tiff tiff, TiffKind kind, TiffInk ink, BarStamp stamp)
{
    /// <summary>Writes the parts.</summary>
    /// <param name="parts">Columns and rows of strips or tiles.</param>
    /// <param name="isBigEndian">Whether numbers begin with their high byte.</param>
    /// <param name="target">The copy.</param>
    /// <returns>Number of each part in the picture, where it lies now and how many bytes it takes.</returns>
    public IReadOnlyList<(int Part, long Start, long Length)> Write(StoredBox parts, bool isBigEndian, Stream target)
    {
        // Directories must begin at even places.
        if (target.Length % 2 == 1)
        {
            target.WriteByte(0);
        }

        var place = new TiffPart(target);
        using var writer = Tiff.ClientOpen("part", isBigEndian ? "wb" : "wl", null, place) ?? throw new IOException("The copy of the TIFF cannot be written.");
        Describe(writer, parts);
        if (kind.IsTiled)
        {
            CopyTiles(writer, parts);
        }
        else
        {
            CopyRows(writer, parts);
        }

        writer.FlushData();
        return [.. Moved(writer, parts, place.Start)];
    }

    private static void Check(bool isDone)
    {
        if (!isDone)
        {
            throw new InvalidDataException("The TIFF's data are damaged.");
        }
    }

    private void Describe(Tiff writer, StoredBox parts)
    {
        writer.SetField(TiffTag.IMAGEWIDTH, kind.IsTiled ? parts.Width * kind.PartColumns : kind.Width);
        writer.SetField(TiffTag.IMAGELENGTH, kind.IsTiled ? parts.Height * kind.PartRows : Rows(parts));
        writer.SetField(TiffTag.SAMPLESPERPIXEL, kind.Samples);
        writer.SetField(TiffTag.BITSPERSAMPLE, kind.Depth);
        writer.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
        writer.SetField(TiffTag.PHOTOMETRIC, Photometric.MINISBLACK);
        writer.SetField(TiffTag.COMPRESSION, kind.Compression);
        if (tiff.GetField(TiffTag.FILLORDER) is [{ } order, ..])
        {
            writer.SetField(TiffTag.FILLORDER, order.ToInt());
        }

        if (kind.IsTiled)
        {
            writer.SetField(TiffTag.TILEWIDTH, kind.PartColumns);
            writer.SetField(TiffTag.TILELENGTH, kind.PartRows);
        }
        else
        {
            writer.SetField(TiffTag.ROWSPERSTRIP, kind.PartRows);
        }
    }

    private int Rows(StoredBox parts) => Math.Min(kind.Height, parts.Bottom * kind.PartRows) - (parts.Top * kind.PartRows);

    private void CopyRows(Tiff writer, StoredBox parts)
    {
        var (first, row) = (parts.Top * kind.PartRows, new byte[TiffSamples.RowBytesOf(kind, kind.Width)]);
        for (var y = 0; y < Rows(parts); y++)
        {
            Check(tiff.ReadScanline(row, first + y));
            ink.Stamp(row, 0, kind.Width, first + y, stamp);
            Differ(row);
            Check(writer.WriteScanline(row, y));
        }
    }

    private void CopyTiles(Tiff writer, StoredBox parts)
    {
        var (tile, rowBytes) = (new byte[tiff.TileSize()], TiffSamples.RowBytesOf(kind, kind.PartColumns));
        for (var row = parts.Top; row < parts.Bottom; row++)
        {
            for (var column = parts.Left; column < parts.Right; column++)
            {
                var (left, top) = (column * kind.PartColumns, row * kind.PartRows);
                Check(tiff.ReadTile(tile, 0, left, top, 0, 0) >= 0);
                for (var y = 0; y < kind.PartRows; y++)
                {
                    var part = tile.AsSpan(y * rowBytes, rowBytes);
                    ink.Stamp(part, left, kind.PartColumns, top + y, stamp);
                    Differ(part);
                }

                Check(writer.WriteTile(tile, (column - parts.Left) * kind.PartColumns, (row - parts.Top) * kind.PartRows, 0, 0) >= 0);
            }
        }
    }

    // The library takes differences of two-byte samples in the wrong order of their bytes where the high one comes first, so that is not left to it.
    private void Differ(Span<byte> row)
    {
        for (var place = (row.Length * 8 / kind.Depth) - 1; kind.IsPredicted && place >= kind.Samples; place--)
        {
            var difference = TiffSample.Get(row, place, kind.Depth) - TiffSample.Get(row, place - kind.Samples, kind.Depth);
            TiffSample.Set(row, place, kind.Depth, difference & kind.Most);
        }
    }

    private IEnumerable<(int Part, long Start, long Length)> Moved(Tiff writer, StoredBox parts, long start)
    {
        var starts = writer.GetField(kind.IsTiled ? TiffTag.TILEOFFSETS : TiffTag.STRIPOFFSETS)[0].TolongArray();
        var lengths = writer.GetField(kind.IsTiled ? TiffTag.TILEBYTECOUNTS : TiffTag.STRIPBYTECOUNTS)[0].TolongArray();
        var across = (kind.Width + kind.PartColumns - 1) / kind.PartColumns;
        for (var i = 0; i < parts.Width * parts.Height; i++)
        {
            var (column, row) = (parts.Left + (i % parts.Width), parts.Top + (i / parts.Width));
            yield return ((row * across) + column, start + starts[i], lengths[i]);
        }
    }
}
