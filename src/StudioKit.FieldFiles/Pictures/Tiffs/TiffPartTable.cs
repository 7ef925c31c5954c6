namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Makes the first directory of a copied TIFF find the parts that moved.</summary>
internal sealed class TiffPartTable(TiffLayout layout, bool isTiled)
{
    private const ushort Long = 4;
    private const ushort LongOfEight = 16;

    /// <summary>Writes new tables behind everything and points the directory's fields to them.</summary>
    /// <exception cref="NotSupportedException">The copy has outgrown what its offsets can tell.</exception>
    public void Write(IReadOnlyList<(int Part, long Start, long Length)> moved, Stream target)
    {
        target.Seek(0, SeekOrigin.End);
        if (target.Length % 2 == 1)
        {
            target.WriteByte(0);
        }

        Replace(isTiled ? TiffTags.TileOffsets : TiffTags.StripOffsets, moved.Select(part => (part.Part, part.Start)), target);
        Replace(isTiled ? TiffTags.TileByteCounts : TiffTags.StripByteCounts, moved.Select(part => (part.Part, part.Length)), target);
        if (!layout.IsBig && target.Length > uint.MaxValue)
        {
            throw new NotSupportedException("With the bar on it the TIFF would outgrow 4 GB, which its kind cannot. Save it as a big TIFF, or packed.");
        }
    }

    private void Replace(ushort tag, IEnumerable<(int Part, long Value)> changes, Stream target)
    {
        var directory = layout.Directories[0];
        var values = layout.Values(directory, tag);
        foreach (var (part, value) in changes)
        {
            values[part] = value;
        }

        var size = layout.IsBig ? 8 : 4;
        var table = new byte[size * values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            layout.Write(table.AsSpan(i * size), values[i], size);
        }

        var place = target.Seek(0, SeekOrigin.End);
        if (values.Length > 1)
        {
            target.Write(table);
        }

        target.Position = directory.Entries[tag].Place + 2;
        target.Write(Field(values.Length, values.Length > 1 ? place : values[0], size));
    }

    // Kind, count, and the place of the values; a single one stands there itself.
    private byte[] Field(int count, long value, int size)
    {
        var field = new byte[2 + (2 * size)];
        layout.Write(field, layout.IsBig ? LongOfEight : Long, 2);
        layout.Write(field.AsSpan(2), count, size);
        layout.Write(field.AsSpan(2 + size), value, size);
        return field;
    }
}
