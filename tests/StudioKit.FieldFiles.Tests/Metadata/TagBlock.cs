using System.Buffers.Binary;
using System.Text;

namespace StudioKit.FieldFiles.Tests.Metadata;

/// <summary>Builds blocks of tags in nested directories, in either byte order, straight from TIFF 6.0 and CIPA DC-008.</summary>
internal sealed class TagBlock(bool bigEndian)
{
    private readonly SortedDictionary<ushort, (ushort Type, uint Count, byte[] Data)> _tags = [];
    private readonly SortedDictionary<ushort, TagBlock> _inner = [];
    private TagBlock? _next;

    /// <summary>Where the block's values of a tag end up; for strips that stand behind all.</summary>
    public TagBlock Text(ushort tag, string text)
    {
        byte[] data = [.. Encoding.UTF8.GetBytes(text), 0];
        return Raw(tag, 2, (uint)data.Length, data);
    }

    public TagBlock Short(ushort tag, params ushort[] values) => Raw(tag, 3, (uint)values.Length, [.. values.SelectMany(U16)]);

    public TagBlock Long(ushort tag, params uint[] values) => Raw(tag, 4, (uint)values.Length, [.. values.SelectMany(U32)]);

    public TagBlock Ratio(ushort tag, params (uint Over, uint Under)[] values) =>
        Raw(tag, 5, (uint)values.Length, [.. values.SelectMany(value => U32(value.Over).Concat(U32(value.Under)))]);

    public TagBlock Bytes(ushort tag, byte[] data) => Raw(tag, 7, (uint)data.Length, data);

    public TagBlock Inner(ushort tag, TagBlock block)
    {
        _inner[tag] = block;
        return this;
    }

    public TagBlock Next(TagBlock block)
    {
        _next = block;
        return this;
    }

    /// <summary>The block with its head; behind it stand the bytes given, from the place that <paramref name="place"/> is told.</summary>
    public byte[] Build(byte[]? behind = null, ushort place = 0)
    {
        byte[] order = bigEndian ? [.. "MM"u8] : [.. "II"u8];
        if (behind is not null)
        {
            Long(place, 0);
            Long(place, (uint)(8 + Directory(8).Count));
        }

        return [.. order, .. U16(42), .. U32(8), .. Directory(8), .. behind ?? []];
    }

    // A directory with its values behind it, then the inner ones, then the next.
    private List<byte> Directory(uint at)
    {
        var pointers = _inner.Keys.ToDictionary(tag => tag, _ => 0u);
        var end = at + 2 + ((uint)(_tags.Count + _inner.Count) * 12) + 4;
        var (values, rows) = (new List<byte>(), new SortedDictionary<ushort, byte[]>());
        foreach (var (tag, (type, count, data)) in _tags)
        {
            rows[tag] = [.. U16(tag), .. U16(type), .. U32(count), .. data.Length <= 4 ? [.. data, .. new byte[4 - data.Length]] : U32(end + (uint)values.Count)];
            values.AddRange(data.Length > 4 ? [.. data, .. new byte[data.Length % 2]] : []);
        }

        foreach (var (tag, block) in _inner)
        {
            pointers[tag] = end + (uint)values.Count;
            rows[tag] = [.. U16(tag), .. U16(4), .. U32(1), .. U32(pointers[tag])];
            values.AddRange(block.Directory(pointers[tag]));
        }

        var next = _next is null ? [] : _next.Directory(end + (uint)values.Count);
        return [.. U16((ushort)rows.Count), .. rows.Values.SelectMany(row => row), .. U32(_next is null ? 0 : end + (uint)values.Count), .. values, .. next];
    }

    private TagBlock Raw(ushort tag, ushort type, uint count, byte[] data)
    {
        _tags[tag] = (type, count, data);
        return this;
    }

    private byte[] U16(ushort value) => BitConverter.GetBytes(bigEndian ? BinaryPrimitives.ReverseEndianness(value) : value);

    private byte[] U32(uint value) => BitConverter.GetBytes(bigEndian ? BinaryPrimitives.ReverseEndianness(value) : value);
}
