using System.Buffers.Binary;
using System.Text;
using StudioKit.Field.Pictures;

namespace StudioKit.Field.Tests.Pictures;

/// <summary>Blocks are laid out here by hand after CIPA DC-008 (Exif): byte order, 42, place of the first directory; entries of tag, type, count and value.</summary>
public sealed class PictureHeadTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void The_settings_of_a_jpeg_are_read_in_either_byte_order(bool isLittle)
    {
        var head = PictureHead.Of(Jpeg(Exif(isLittle), step: 24));

        head.Kind.Should().Be(PictureKind.Jpeg);
        head.Settings.Aperture!.Value.Value.Should().Be(11);
        head.Settings.Iso!.Value.Value.Should().Be(200);
        head.Settings.FocalLength!.Value.Millimeters.Should().Be(55);
        head.Settings.TakenLocal.Should().Be(new DateTime(2027, 5, 14, 21, 3, 20));
        head.Settings.Camera.Should().Be("body R");
        // The mean of a block is its first coefficient over eight (ISO/IEC 10918-1 annex A): steps of 24 are three codes.
        head.BrightnessStep.Should().Be(3);
    }

    [Fact]
    public void The_settings_of_a_png_stand_in_a_chunk_of_their_own()
    {
        var block = Exif(isLittle: true);
        byte[] length = [0, 0, (byte)(block.Length >> 8), (byte)block.Length];
        byte[] png = [0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10, 0, 0, 0, 13, .. "IHDR"u8, .. new byte[17], .. length, .. "eXIf"u8, .. block, 0, 0, 0, 0];

        var head = PictureHead.Of(png);

        head.Kind.Should().Be(PictureKind.Png);
        head.Settings.Iso!.Value.Value.Should().Be(200);
        head.BrightnessStep.Should().Be(0);
    }

    [Fact]
    public void An_f_number_over_nought_is_none()
    {
        var block = Exif(isLittle: true);
        block.AsSpan(^12..^8).Clear();

        PictureHead.Of(Jpeg(block, step: 8)).Settings.Aperture.Should().BeNull();
    }

    [Fact]
    public void Whatever_bytes_there_are_the_reading_ends_without_a_failure()
    {
        var whole = Jpeg(Exif(isLittle: true), step: 16);
        var damaged = Gen.Select(Gen.Int[0, whole.Length - 1], Gen.Byte, Gen.Int[0, whole.Length], (at, value, end) =>
        {
            var bytes = whole.ToArray();
            bytes[at] = value;
            return bytes[..end];
        });

        damaged.Sample(bytes => PictureHead.Of(bytes) is not null, iter: RandomFiles.Count);
    }

    // Two directories, and behind them the date, the names, and as the last things f-number and focal length as ratios.
    private static byte[] Exif(bool isLittle)
    {
        const int Second = 8 + 2 + (2 * 12) + 4;
        const int Values = Second + 2 + (4 * 12) + 4;
        var text = Encoding.ASCII.GetBytes("2027:05:14 21:03:20\0body R\0\0");
        var block = new byte[Values + text.Length + 16];
        (isLittle ? "II*\0"u8 : "MM\0*"u8).CopyTo(block);
        Whole(4, 8);
        Half(8, 2);
        Entry(10, 0x0110, 2, 7, Values + 20);
        Entry(22, 0x8769, 4, 1, Second);
        Half(Second, 4);
        Entry(Second + 2, 0x829D, 5, 1, Values + text.Length);
        Entry(Second + 14, 0x8827, 3, 1, null);
        Half(Second + 22, 200);
        Entry(Second + 26, 0x9003, 2, 20, Values);
        Entry(Second + 38, 0x920A, 5, 1, Values + text.Length + 8);
        text.CopyTo(block, Values);
        Whole(Values + text.Length, 110);
        Whole(Values + text.Length + 4, 10);
        Whole(Values + text.Length + 8, 55);
        Whole(Values + text.Length + 12, 1);
        return block;

        void Entry(int at, int tag, int type, int count, int? value)
        {
            Half(at, tag);
            Half(at + 2, type);
            Whole(at + 4, count);
            Whole(at + 8, value ?? 0);
        }

        void Half(int at, int value)
        {
            if (isLittle)
            {
                BinaryPrimitives.WriteUInt16LittleEndian(block.AsSpan(at), (ushort)value);
            }
            else
            {
                BinaryPrimitives.WriteUInt16BigEndian(block.AsSpan(at), (ushort)value);
            }
        }

        void Whole(int at, int value)
        {
            if (isLittle)
            {
                BinaryPrimitives.WriteInt32LittleEndian(block.AsSpan(at), value);
            }
            else
            {
                BinaryPrimitives.WriteInt32BigEndian(block.AsSpan(at), value);
            }
        }
    }

    private static byte[] Jpeg(byte[] exif, byte step)
    {
        var (block, table) = (exif.Length + 8, new byte[65]);
        table[1] = step;
        return [0xFF, 0xD8, 0xFF, 0xE1, (byte)(block >> 8), (byte)block, .. "Exif\0\0"u8, .. exif, 0xFF, 0xDB, 0, 67, .. table, 0xFF, 0xDA];
    }
}
