using System.Buffers.Binary;

namespace StudioKit.FieldFiles.Metadata;

/// <summary>Takes all out of a TIFF file, or of an Exif block, which is built like one, that is not needed to show the picture or is no number of its exposure.</summary>
/// <remarks>
/// It goes by what may stay, byte by byte: what no tag of the lists below leads to becomes zero, so that neither an unknown tag, a maker's block, a
/// second page nor what an editor left behind between blocks comes along (TIFF 6.0; CIPA DC-008).
/// </remarks>
internal sealed class CleanTiff
{
    private const int ExifPointer = 34665;
    private const int Compression = 259;

    // The coding of TIFF 6.0 section 22 keeps its picture where others keep a small one; what is which cannot be told.
    private const int OldJpeg = 6;
    private const int Jpeg = 7;
    private const int JpegTables = 347;
    private const int ColourProfile = 34675;
    private const int ByteOrderLength = 8;
    private const int JpegHead = 1 << 16;

    // TIFF 6.0: size, coding, places of strips and tiles, colour and orientation. 34675 is the colour profile.
    private static readonly HashSet<int> PictureTags =
    [
        254, 256, 257, 258, 259, 262, 266, 273, 274, 277, 278, 279, 280, 281, 282, 283, 284, 292, 293, 296, 301, 317, 318, 319, 320, 321, 322, 323, 324,
        325, 332, 338, 339, 340, 341, 342, JpegTables, 529, 530, 531, 532, ColourProfile, ExifPointer,
    ];

    // CIPA DC-008: orientation, resolution and how colours are sampled.
    private static readonly HashSet<int> BlockTags = [274, 282, 283, 296, 531, ExifPointer];

    // Numbers of the exposure: time, f-number, programme, ISO speed, version, components, exposure values, metering, flash, focal length, colour space,
    // pixels, resolution of the sensor, modes.
    private static readonly HashSet<int> ExposureTags =
    [
        0x829A, 0x829D, 0x8822, 0x8827, 0x8830, 0x9000, 0x9101, 0x9201, 0x9202, 0x9203, 0x9204, 0x9205, 0x9207, 0x9208, 0x9209, 0x920A, 0xA001, 0xA002,
        0xA003, 0xA20E, 0xA20F, 0xA210, 0xA402, 0xA403, 0xA404, 0xA405,
    ];

    private static readonly int[] TypeSizes = [0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8];
    private readonly Stream _file;
    private readonly bool _bigEndian;
    private readonly KeptRanges _kept = new();
    private readonly List<TiffField> _removed = [];
    private readonly List<(long Start, long Length)> _jpegs = [];

    private CleanTiff(Stream file, bool bigEndian) => (_file, _bigEndian) = (file, bigEndian);

    /// <summary>What was found that does not stay.</summary>
    public TellingMetadata Found { get; private set; }

    /// <summary>Reads a whole picture.</summary>
    /// <returns>What to do; none where it is no TIFF or damaged.</returns>
    public static CleanTiff? OfPicture(Stream file) => Read(file, PictureTags);

    /// <summary>Reads an Exif block, which begins with its byte order.</summary>
    public static CleanTiff? OfBlock(Stream block) => Read(block, BlockTags);

    /// <summary>Writes what stays.</summary>
    public void Write(Stream target) => _kept.Copy(_file, target);

    private static CleanTiff? Read(Stream file, HashSet<int> tags)
    {
        file.Position = 0;
        var head = new byte[ByteOrderLength];
        if (file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length
            || head is not ([(byte)'I', (byte)'I', 42, 0, ..] or [(byte)'M', (byte)'M', 0, 42, ..]))
        {
            return null;
        }

        var clean = new CleanTiff(file, head[0] == 'M');
        clean._kept.Keep(0, ByteOrderLength, file.Length);
        return clean.Directory(clean.U32(head.AsSpan(4)), tags, isMain: true) && !clean.IsTangled && !clean.JpegTells ? clean : null;
    }

    // A picture whose strips, or whatever else stays, reach into what does not is damaged, or made so on purpose.
    private bool IsTangled => _removed.Exists(entry => _kept.Overlaps(entry.Value, entry.Length));

    // Strips that are JPEGs can carry segments of their own, which cannot be taken out without moving all that follows.
    private bool JpegTells => _jpegs.Exists(part => Bytes(part.Start, Math.Min(part.Length, JpegHead)) is not { } head || !JpegShape.IsQuiet(head));

    private bool Directory(long at, HashSet<int> tags, bool isMain)
    {
        if (Bytes(at, 2) is not { } counted || Bytes(at + 2, (U16(counted) * 12) + 4) is not { } rows)
        {
            return false;
        }

        var entries = Enumerable.Range(0, U16(counted)).Select(i => Entry(rows.AsSpan(i * 12, 12))).ToList();
        if (isMain && entries.Exists(entry => entry is { Tag: Compression, Value: var coding } && (coding & 0xFFFF) == OldJpeg))
        {
            return false;
        }

        var staying = entries.Where(entry => Stays(entry, tags, isMain)).ToList();
        var going = entries.Except(staying).ToList();
        going.ForEach(entry => Found |= KindOf(entry.Tag));
        _removed.AddRange(going.Where(entry => entry.Length > 4));
        Found |= U32(rows.AsSpan(rows.Length - 4)) != 0 ? TellingMetadata.EmbeddedPicture : TellingMetadata.None;
        _kept.Replace(at, [.. U16((ushort)staying.Count), .. staying.SelectMany(entry => entry.Row!), 0, 0, 0, 0]);
        staying.Where(entry => entry.Length > 4).ToList().ForEach(entry => _kept.Keep(entry.Value, entry.Length, _file.Length));
        NoteJpegs(staying);
        Strips(staying, 273, 279);
        Strips(staying, 324, 325);
        return staying.Find(entry => entry.Tag == ExifPointer) is not { Row: not null } pointer || Directory(pointer.Value, ExposureTags, isMain: false);
    }

    // Nothing but numbers stays, whatever a tag should hold; in a block of the exposure but a few: no text and nothing that could hold one.
    private static bool Stays(TiffField entry, HashSet<int> tags, bool isMain)
    {
        var isPicture = ReferenceEquals(tags, PictureTags);
        var isFewNumbers = entry.Count <= 4 && (entry.Type is 3 or 4 or 5 or 9 or 10 || (entry.Tag is 0x9000 or 0x9101 && entry.Type == 7));
        return tags.Contains(entry.Tag) && (isMain || entry.Tag != ExifPointer)
            && (isFewNumbers || (isPicture && (entry.Tag is JpegTables or ColourProfile || entry.Type is 3 or 4 or 5 or 8 or 9 or 10 or 11 or 12)));
    }

    private static TellingMetadata KindOf(int tag) => tag switch
    {
        34853 or 33550 or 33922 or 34264 or (>= 34735 and <= 34737) => TellingMetadata.Position,
        0xA430 or 0xA431 or 0xA435 or 0xC62F or 315 => TellingMetadata.SerialNumber,
        0x927C or 0xC634 => TellingMetadata.MakerNote,
        330 or 513 or 514 => TellingMetadata.EmbeddedPicture,
        _ => TellingMetadata.Text,
    };

    private void NoteJpegs(List<TiffField> entries)
    {
        if (entries.Exists(entry => entry is { Tag: Compression, Row: not null } && Values(entry) is [Jpeg]))
        {
            (int Places, int Lengths)[] parts = [(273, 279), (324, 325)];
            _jpegs.AddRange(parts.SelectMany(part => Values(entries.Find(entry => entry.Tag == part.Places)).Zip(Values(entries.Find(entry => entry.Tag == part.Lengths)))));
            _jpegs.AddRange(entries.Where(entry => entry is { Tag: JpegTables, Length: > 4 }).Select(entry => (entry.Value, entry.Length)));
        }
    }

    private void Strips(List<TiffField> entries, int offsets, int lengths)
    {
        var (starts, sizes) = (Values(entries.Find(entry => entry.Tag == offsets)), Values(entries.Find(entry => entry.Tag == lengths)));
        foreach (var (start, size) in starts.Zip(sizes))
        {
            _kept.Keep(start, size, _file.Length);
        }
    }

    private List<long> Values(TiffField entry)
    {
        if (entry.Row is null || entry.Type is not (3 or 4))
        {
            return [];
        }

        var size = TypeSizes[entry.Type];
        var bytes = entry.Length > 4 ? Bytes(entry.Value, entry.Length) ?? [] : entry.Row[8..12];
        return [.. Enumerable.Range(0, (int)Math.Min(entry.Count, bytes.Length / size)).Select(i => size == 2 ? U16(bytes.AsSpan(2 * i)) : U32(bytes.AsSpan(4 * i)))];
    }

    private TiffField Entry(ReadOnlySpan<byte> row)
    {
        var (type, count) = (U16(row[2..]), U32(row[4..]));
        return new TiffField(U16(row), type, count, (type < TypeSizes.Length ? TypeSizes[type] : 1) * count, U32(row[8..]), row.ToArray());
    }

    private byte[]? Bytes(long at, long count)
    {
        if (at < 0 || count < 0 || at + count > _file.Length)
        {
            return null;
        }

        var bytes = new byte[count];
        _file.Position = at;
        _file.ReadExactly(bytes);
        return bytes;
    }

    private ushort U16(ReadOnlySpan<byte> bytes) => _bigEndian ? BinaryPrimitives.ReadUInt16BigEndian(bytes) : BinaryPrimitives.ReadUInt16LittleEndian(bytes);

    private long U32(ReadOnlySpan<byte> bytes) => _bigEndian ? BinaryPrimitives.ReadUInt32BigEndian(bytes) : BinaryPrimitives.ReadUInt32LittleEndian(bytes);

    private byte[] U16(ushort value) => _bigEndian ? [(byte)(value >> 8), (byte)value] : [(byte)value, (byte)(value >> 8)];

    /// <summary>One row of a directory.</summary>
    private readonly record struct TiffField(int Tag, int Type, long Count, long Length, long Value, byte[]? Row);
}
