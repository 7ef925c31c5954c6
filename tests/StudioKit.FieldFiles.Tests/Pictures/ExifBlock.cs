using System.Buffers.Binary;
using System.Text;

namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>Builds Exif blocks tag by tag, in either byte order, straight from CIPA DC-008.</summary>
internal sealed class ExifBlock(bool bigEndian)
{
    private const ushort Ascii = 2;
    private const ushort Short = 3;
    private const ushort Long = 4;
    private const ushort Rational = 5;
    private readonly SortedDictionary<ushort, (ushort Type, byte[] Data, int Count)> _main = [];
    private readonly SortedDictionary<ushort, (ushort Type, byte[] Data, int Count)> _taking = [];

    public ExifBlock Camera(string make, string model) => Text(_main, 0x010F, make).Text(_main, 0x0110, model);

    public ExifBlock Orientation(ushort value) => Put(_main, 0x0112, Short, U16(value), 1);

    public ExifBlock ExposureTime(uint over, uint under) => Ratio(0x829A, over, under);

    public ExifBlock FNumber(uint over, uint under) => Ratio(0x829D, over, under);

    public ExifBlock Iso(ushort value) => Put(_taking, 0x8827, Short, U16(value), 1);

    public ExifBlock FocalLength(uint over, uint under) => Ratio(0x920A, over, under);

    public ExifBlock Taken(string date, string offset = "")
    {
        Text(_taking, 0x9003, date);
        return offset.Length == 0 ? this : Text(_taking, 0x9011, offset);
    }

    public ExifBlock Lens(string model) => Text(_taking, 0xA434, model);

    /// <summary>A copy of a JPEG with this block as its first APP1 segment.</summary>
    public void PutInto(string source, string target)
    {
        var jpeg = File.ReadAllBytes(source);
        byte[] data = [.. "Exif\0\0"u8, .. Build()];
        var length = data.Length + 2;
        File.WriteAllBytes(target, [0xFF, 0xD8, 0xFF, 0xE1, (byte)(length >> 8), (byte)length, .. data, .. jpeg[2..]]);
    }

    public byte[] Build()
    {
        // The first directory at 8, the second right behind it and what does not fit into four bytes behind that.
        Put(_main, 0x8769, Long, U32(0), 1);
        var second = 8 + 2 + (12 * _main.Count) + 4;
        Put(_main, 0x8769, Long, U32((uint)second), 1);
        var values = second + 2 + (12 * _taking.Count) + 4;
        var rest = new List<byte>();
        byte[] order = bigEndian ? [.. "MM"u8] : [.. "II"u8];
        return [.. order, .. U16(42), .. U32(8), .. Directory(_main, values, rest), .. Directory(_taking, values, rest), .. rest];
    }

    private ExifBlock Text(SortedDictionary<ushort, (ushort Type, byte[] Data, int Count)> into, ushort tag, string text)
    {
        byte[] data = [.. Encoding.ASCII.GetBytes(text), 0];
        return Put(into, tag, Ascii, data, data.Length);
    }

    private ExifBlock Ratio(ushort tag, uint over, uint under) => Put(_taking, tag, Rational, [.. U32(over), .. U32(under)], 1);

    private ExifBlock Put(
        SortedDictionary<ushort, (ushort Type, byte[] Data, int Count)> into, ushort tag, ushort type, byte[] data, int count)
    {
        into[tag] = (type, data, count);
        return this;
    }

    private List<byte> Directory(SortedDictionary<ushort, (ushort Type, byte[] Data, int Count)> tags, int values, List<byte> rest)
    {
        List<byte> bytes = [.. U16((ushort)tags.Count)];
        foreach (var (tag, (type, data, count)) in tags)
        {
            bytes.AddRange([.. U16(tag), .. U16(type), .. U32((uint)count)]);
            if (data.Length <= 4)
            {
                bytes.AddRange([.. data, .. new byte[4 - data.Length]]);
            }
            else
            {
                bytes.AddRange(U32((uint)(values + rest.Count)));
                rest.AddRange(data);
            }
        }

        bytes.AddRange(U32(0));
        return bytes;
    }

    private byte[] U16(ushort value)
    {
        var bytes = BitConverter.GetBytes(bigEndian ? BinaryPrimitives.ReverseEndianness(value) : value);
        return bytes;
    }

    private byte[] U32(uint value)
    {
        var bytes = BitConverter.GetBytes(bigEndian ? BinaryPrimitives.ReverseEndianness(value) : value);
        return bytes;
    }
}
