using BitMiracle.LibTiff.Classic;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>How a test's TIFF is kept.</summary>
internal sealed record CodedTiff
{
    public int Width { get; init; } = 200;

    public int Height { get; init; } = 150;

    public int Samples { get; init; } = 3;

    public int Depth { get; init; } = 8;

    public Photometric Colour { get; init; } = Photometric.RGB;

    public Compression Packing { get; init; } = Compression.LZW;

    public bool IsPredicted { get; init; }

    public bool IsTiled { get; init; }

    public bool IsBigEndian { get; init; }

    public bool HasBigOffsets { get; init; }

    public int StripRows { get; init; } = 16;

    public byte[] Profile { get; init; } = [1, 2, 3, 4, 5, 6, 7];

    private int RowBytes => ((Width * Samples * Depth) + 7) / 8;

    /// <summary>Writes it.</summary>
    /// <remarks>
    /// Differences of samples are taken here (TIFF 6.0 section 14) and the file told of them afterwards: the library takes them wrongly where the high byte
    /// comes first.
    /// </remarks>
    public void Write(string path, Func<int, int, byte> bytes)
    {
        using (var tiff = Tiff.Open(path, "w" + (IsBigEndian ? "b" : "l") + (HasBigOffsets ? "8" : "")))
        {
            Describe(tiff);
            WriteRows(tiff, bytes);
        }

        if (IsPredicted)
        {
            var file = File.ReadAllBytes(path);
            byte[] field = IsBigEndian ? [1, 61, 0, 3, 0, 0, 0, 1, 0, 1] : [61, 1, 3, 0, 1, 0, 0, 0, 1, 0];
            file[file.AsSpan().LastIndexOf(field) + (IsBigEndian ? 9 : 8)] = 2;
            File.WriteAllBytes(path, file);
        }
    }

    private void WriteRows(Tiff tiff, Func<int, int, byte> bytes)
    {
        if (!IsTiled)
        {
            for (var y = 0; y < Height; y++)
            {
                tiff.WriteScanline(Differences([.. Enumerable.Range(0, RowBytes).Select(x => bytes(x, y))]), y);
            }

            return;
        }

        for (var top = 0; top < Height; top += 32)
        {
            for (var left = 0; left < Width; left += 32)
            {
                tiff.WriteTile(
                    [.. Enumerable.Range(top, 32).SelectMany(y => Differences([.. Enumerable.Range(left * Samples * Depth / 8, 32 * Samples * Depth / 8).Select(x => bytes(x, y))]))],
                    left, top, 0, 0);
            }
        }
    }

    private byte[] Differences(byte[] row)
    {
        var size = Depth / 8;
        for (var i = row.Length - size; IsPredicted && i >= Samples * size; i -= size)
        {
            var left = i - (Samples * size);
            var difference = size == 1 ? row[i] - row[left] : (row[i] | (row[i + 1] << 8)) - (row[left] | (row[left + 1] << 8));
            row[i] = (byte)difference;
            row[i + size - 1] = size == 1 ? row[i] : (byte)(difference >> 8);
        }

        return row;
    }

    /// <summary>Bytes of all rows of a file, as the library unpacks them.</summary>
    public byte[][] Rows(string path)
    {
        using var tiff = Tiff.Open(path, "r");
        tiff.GetField(TiffTag.ICCPROFILE)[1].ToByteArray().Should().Equal(Profile);
        if (!IsTiled)
        {
            return [.. Enumerable.Range(0, Height).Select(y =>
            {
                var row = new byte[RowBytes];
                tiff.ReadScanline(row, y).Should().BeTrue();
                return row;
            })];
        }

        var rows = Enumerable.Range(0, Height).Select(_ => new byte[RowBytes]).ToArray();
        var tileBytes = 32 * Samples * Depth / 8;
        var tile = new byte[32 * tileBytes];
        for (var top = 0; top < Height; top += 32)
        {
            for (var left = 0; left < Width; left += 32)
            {
                tiff.ReadTile(tile, 0, left, top, 0, 0).Should().BePositive();
                var start = left * Samples * Depth / 8;
                for (var y = top; y < Math.Min(Height, top + 32); y++)
                {
                    tile.AsSpan((y - top) * tileBytes, Math.Min(tileBytes, RowBytes - start)).CopyTo(rows[y].AsSpan(start));
                }
            }
        }

        return rows;
    }

    private void Describe(Tiff tiff)
    {
        tiff.SetField(TiffTag.IMAGEWIDTH, Width);
        tiff.SetField(TiffTag.IMAGELENGTH, Height);
        tiff.SetField(TiffTag.SAMPLESPERPIXEL, Samples);
        tiff.SetField(TiffTag.BITSPERSAMPLE, Depth);
        tiff.SetField(TiffTag.PHOTOMETRIC, Colour);
        tiff.SetField(TiffTag.PLANARCONFIG, PlanarConfig.CONTIG);
        tiff.SetField(TiffTag.COMPRESSION, Packing);
        tiff.SetField(TiffTag.ICCPROFILE, Profile.Length, Profile);
        if (IsPredicted)
        {
            tiff.SetField(TiffTag.PREDICTOR, Predictor.NONE);
        }

        if (Colour == Photometric.PALETTE)
        {
            var map = Enumerable.Range(0, 1 << Depth).Select(i => (short)(ushort)(i * 65535 / ((1 << Depth) - 1))).ToArray();
            tiff.SetField(TiffTag.COLORMAP, map, map, map);
        }

        if (IsTiled)
        {
            tiff.SetField(TiffTag.TILEWIDTH, 32);
            tiff.SetField(TiffTag.TILELENGTH, 32);
        }
        else
        {
            tiff.SetField(TiffTag.ROWSPERSTRIP, StripRows);
        }
    }
}
