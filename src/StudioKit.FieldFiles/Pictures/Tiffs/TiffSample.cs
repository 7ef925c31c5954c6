using System.Buffers.Binary;
using StudioKit.FieldFiles.Pictures.Png;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Samples in a row of a TIFF: of two bytes the low one first, of less than one from the high end of each byte.</summary>
internal static class TiffSample
{
    public static int Get(ReadOnlySpan<byte> row, int place, int depth) => depth switch
    {
        16 => BinaryPrimitives.ReadUInt16LittleEndian(row[(2 * place)..]),
        8 => row[place],
        _ => PngSample.Get(row, place, depth),
    };

    public static void Set(Span<byte> row, int place, int depth, int value)
    {
        switch (depth)
        {
            case 16:
                BinaryPrimitives.WriteUInt16LittleEndian(row[(2 * place)..], (ushort)value);
                break;
            case 8:
                row[place] = (byte)value;
                break;
            default:
                PngSample.Set(row, place, depth, value);
                break;
        }
    }
}
