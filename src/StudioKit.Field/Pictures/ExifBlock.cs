using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Field.Pictures;

/// <summary>The entries of an Exif block (CIPA DC-008) that say how a picture was taken; whatever is damaged or impossible is none.</summary>
internal sealed class ExifBlock
{
    private const int EntryBytes = 12;
    private const int MostEntries = 512;
    private readonly byte[] _block;
    private readonly bool _isLittle;
    private readonly Dictionary<int, (int Type, int Count, int Place)> _entries = [];

    private ExifBlock(byte[] block, bool isLittle) => (_block, _isLittle) = (block, isLittle);

    /// <summary>Reads a block.</summary>
    /// <param name="block">A TIFF structure, from its byte order on.</param>
    public static FrameSettings Read(ReadOnlySpan<byte> block)
    {
        if (block.Length < 8 || !(block.StartsWith("II*\0"u8) || block.StartsWith("MM\0*"u8)))
        {
            return new FrameSettings();
        }

        var exif = new ExifBlock(block.ToArray(), block[0] == 'I');
        exif.Take(exif.Whole(4));
        if (exif._entries.TryGetValue(0x8769, out var pointer))
        {
            exif.Take(exif.Whole(pointer.Place));
        }

        return exif.Settings();
    }

    private FrameSettings Settings() => new()
    {
        Shutter = Ratio(0x829A) is { } time ? new ShutterSpeed(time) : null,
        Aperture = Ratio(0x829D) is { } number ? new FNumber(number) : null,
        Iso = Integer(0x8827) is { } speed and > 0 ? new IsoSpeed(speed) : null,
        FocalLength = Ratio(0x920A) is { } focal ? Length.FromMillimeters(focal) : null,
        TakenLocal = DateTime.TryParseExact(Text(0x9003), "yyyy:MM:dd HH:mm:ss", CultureInfo.InvariantCulture, DateTimeStyles.None, out var taken) ? taken : null,
        RecordedPixels = Integer(0xA002) is { } wide and > 0 && Integer(0xA003) is { } high and > 0 ? new PixelDimensions(wide, high) : null,
        Camera = Text(0x0110).StartsWith(Text(0x010F), StringComparison.OrdinalIgnoreCase) ? Text(0x0110) : $"{Text(0x010F)} {Text(0x0110)}".Trim(),
        Lens = Text(0xA434),
        Description = Text(0x010E),
    };

    private void Take(int directory)
    {
        if (directory < 8 || directory > _block.Length - 2)
        {
            return;
        }

        for (var i = 0; i < Math.Min(Half(directory), MostEntries); i++)
        {
            var entry = directory + 2 + (i * EntryBytes);
            if (entry + EntryBytes > _block.Length)
            {
                return;
            }

            var (type, count) = (Half(entry + 2), Math.Max(0, Whole(entry + 4)));
            var bytes = (long)count * (type switch { 3 => 2, 4 or 9 => 4, 5 or 10 => 8, _ => 1 });
            var place = bytes <= 4 ? entry + 8 : Whole(entry + 8);
            if (place >= 0 && place + bytes <= _block.Length)
            {
                _entries.TryAdd(Half(entry), (type, count, place));
            }
        }
    }

    private double? Ratio(int tag)
    {
        if (!_entries.TryGetValue(tag, out var entry) || entry is not { Type: 5, Count: >= 1 })
        {
            return null;
        }

        var value = (uint)Whole(entry.Place) / (double)(uint)Whole(entry.Place + 4);
        return double.IsFinite(value) && value > 0 ? value : null;
    }

    private int? Integer(int tag) => !_entries.TryGetValue(tag, out var entry) || entry.Count < 1 ? null
        : entry.Type == 3 ? Half(entry.Place) : entry.Type == 4 ? Whole(entry.Place) : null;

    private string Text(int tag) => _entries.TryGetValue(tag, out var entry) && entry.Type == 2
        ? Encoding.UTF8.GetString(_block, entry.Place, entry.Count).Trim('\0', ' ')
        : "";

    private int Half(int place) => _isLittle ? BinaryPrimitives.ReadUInt16LittleEndian(_block.AsSpan(place)) : BinaryPrimitives.ReadUInt16BigEndian(_block.AsSpan(place));

    private int Whole(int place) => _isLittle ? BinaryPrimitives.ReadInt32LittleEndian(_block.AsSpan(place)) : BinaryPrimitives.ReadInt32BigEndian(_block.AsSpan(place));
}
