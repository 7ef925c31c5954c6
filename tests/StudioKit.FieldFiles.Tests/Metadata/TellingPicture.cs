using System.Buffers.Binary;
using System.Globalization;
using System.IO.Compression;
using System.Text;
using SkiaSharp;

namespace StudioKit.FieldFiles.Tests.Metadata;

/// <summary>Pictures that tell everything of where they were taken and by whom, in every block that a file may have.</summary>
internal sealed class TellingPicture(double latitude, double longitude, string word, bool bigEndian)
{
    private const ushort Wide = 400;
    private const ushort High = 300;

    public const string BodySerial = "SN-4471-0093";
    public const string LensSerial = "LN-2208-1175";
    public const string Owner = "Owner of the camera";

    public void Save(string path) => File.WriteAllBytes(path, Path.GetExtension(path) switch
    {
        ".png" => Png(),
        ".tif" => Tiff(),
        _ => Jpeg(),
    });

    public byte[] Jpeg()
    {
        var picture = Encoded(SKEncodedImageFormat.Jpeg);
        var small = Encoded(SKEncodedImageFormat.Jpeg);
        byte[] inner = [.. small[..2], .. Segment(0xE1, [.. "Exif\0\0"u8, .. Exif(null)]), .. small[2..]];
        byte[] head =
        [
            .. Segment(0xE0, [.. "JFXX\0"u8, 0x10, .. inner]),
            .. Segment(0xE1, [.. "Exif\0\0"u8, .. Exif(inner)]),
            .. Segment(0xE1, [.. "http://ns.adobe.com/xap/1.0/\0"u8, .. Encoding.UTF8.GetBytes(Xmp())]),
            .. Segment(0xE2, [.. "MPF\0"u8, .. Exif(null)]),
            .. Segment(0xED, [.. "Photoshop 3.0\0"u8, .. "8BIM"u8, 4, 4, 0, 0, .. Big(Iptc().Length), .. Iptc()]),
            .. Segment(0xE7, Encoding.UTF8.GetBytes(Words())),
            .. Segment(0xFE, Encoding.UTF8.GetBytes(Words())),
        ];
        return [.. picture[..2], .. head, .. picture[2..], .. inner, .. Encoding.UTF8.GetBytes(Words())];
    }

    public byte[] Png()
    {
        var picture = Encoded(SKEncodedImageFormat.Png);
        var headEnd = 8 + 12 + 13;
        byte[] head =
        [
            .. Chunk("eXIf", Exif(null)),
            .. Chunk("tEXt", [.. "Comment\0"u8, .. Encoding.Latin1.GetBytes(Words())]),
            .. Chunk("iTXt", [.. "XML:com.adobe.xmp\0\0\0\0\0"u8, .. Encoding.UTF8.GetBytes(Xmp())]),
            .. Chunk("zTXt", [.. "Comment\0\0"u8, .. Deflated(Words())]),
            .. Chunk("prVt", Encoding.UTF8.GetBytes(Words())),
        ];
        return [.. picture[..headEnd], .. head, .. picture[headEnd..], .. Encoding.UTF8.GetBytes(Words())];
    }

    /// <summary>Grey pixels that grow brighter from row to row, in one strip.</summary>
    public byte[] Tiff()
    {
        byte[] strip = [.. Enumerable.Range(0, Wide * High).Select(i => (byte)(100 + (i / Wide / 3)))];
        return Tags(null)
            .Short(256, Wide).Short(257, High).Short(258, 8).Short(259, 1).Short(262, 1).Short(277, 1).Short(278, High).Long(279, Wide * High)
            .Bytes(700, Encoding.UTF8.GetBytes(Xmp())).Bytes(33723, Iptc())
            .Bytes(34736, [.. BitConverter.GetBytes(latitude), .. BitConverter.GetBytes(longitude)])
            .Build(strip, 273);
    }

    private byte[] Exif(byte[]? small) => Tags(small).Build();

    private TagBlock Tags(byte[]? small)
    {
        var taking = new TagBlock(bigEndian)
            .Ratio(0x829A, (1, 200)).Ratio(0x829D, (16, 1)).Short(0x8827, 100).Ratio(0x920A, (90, 1)).Bytes(0x9000, [.. "0232"u8])
            .Text(0x9003, "2026:05:09 14:12:03").Text(0xA430, Owner).Text(0xA431, BodySerial).Text(0xA435, LensSerial)
            .Bytes(0x927C, Encoding.UTF8.GetBytes(Words())).Bytes(0x9286, [.. "ASCII\0\0\0"u8, .. Encoding.UTF8.GetBytes(Words())]);
        var position = new TagBlock(bigEndian).Text(1, latitude < 0 ? "S" : "N").Ratio(2, Sexagesimal(latitude)).Text(3, longitude < 0 ? "W" : "E").Ratio(4, Sexagesimal(longitude));
        var main = new TagBlock(bigEndian)
            .Short(0x0112, 1).Ratio(0x011A, (300, 1)).Text(0x010E, Words()).Text(0x013B, Owner).Text(0x8298, word).Text(0xC62F, BodySerial)
            .Inner(0x8769, taking).Inner(0x8825, position);
        return small is null ? main : main.Next(new TagBlock(bigEndian).Long(0x0202, (uint)small.Length).Bytes(0x0201, small));
    }

    private static (uint, uint)[] Sexagesimal(double angle)
    {
        var value = Math.Abs(angle);
        return [((uint)value, 1), ((uint)(value % 1 * 60), 1), ((uint)Math.Round(value * 60 % 1 * 6000), 100)];
    }

    private string Xmp() => string.Create(
        CultureInfo.InvariantCulture,
        $"<x:xmpmeta><rdf:Description exif:GPSLatitude=\"{Minutes(latitude)}N\" exif:GPSLongitude=\"{Minutes(longitude)}W\" photoshop:City=\"{word}\" aux:SerialNumber=\"{BodySerial}\" aux:OwnerName=\"{Owner}\" xmpGImg:Thumbnail=\"x\"/></x:xmpmeta>");

    private static string Minutes(double angle) =>
        string.Create(CultureInfo.InvariantCulture, $"{(int)Math.Abs(angle)},{Math.Abs(angle) % 1 * 60:0.0000}");

    private string Words() => string.Create(CultureInfo.InvariantCulture, $"{word} {latitude:0.00000} {longitude:0.00000} {BodySerial} {LensSerial} {Owner}");

    // IPTC IIM 4.2: record 2, data set 90 is the city, 92 the sublocation.
    private byte[] Iptc()
    {
        var text = Encoding.UTF8.GetBytes(word);
        return [0x1C, 2, 90, 0, (byte)text.Length, .. text, 0x1C, 2, 92, 0, (byte)text.Length, .. text];
    }

    private static byte[] Encoded(SKEncodedImageFormat format)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(Wide, High, SKColorType.Rgba8888, SKAlphaType.Opaque));
        bitmap.Erase(new SKColor(240, 240, 240));
        bitmap.SetPixel(5, 5, SKColors.Black);
        using var data = bitmap.Encode(format, 92);
        return data.ToArray();
    }

    private static byte[] Big(int value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteInt32BigEndian(bytes, value);
        return bytes;
    }

    public static byte[] Segment(byte marker, byte[] data) => [0xFF, marker, .. Big(data.Length + 2)[2..], .. data];

    // The check sum by its definition, one bit at a time (ISO/IEC 15948 annex D).
    public static byte[] Chunk(string type, byte[] data)
    {
        byte[] body = [.. Encoding.ASCII.GetBytes(type), .. data];
        var sum = body.Aggregate(uint.MaxValue, (all, value) => Enumerable.Range(0, 8).Aggregate(all ^ value, (bits, _) => (bits & 1) == 1 ? 0xEDB88320 ^ (bits >> 1) : bits >> 1));
        return [.. Big(data.Length), .. body, .. Big((int)~sum)];
    }

    private static byte[] Deflated(string text)
    {
        using var stream = new MemoryStream();
        using (var packer = new ZLibStream(stream, CompressionLevel.Optimal, leaveOpen: true))
        {
            packer.Write(Encoding.UTF8.GetBytes(text));
        }

        return stream.ToArray();
    }
}
