using BitMiracle.LibTiff.Classic;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Puts a bar onto the samples of a plain TIFF, in their own depth and colours.</summary>
internal sealed class TiffInk
{
    private readonly TiffKind _kind;
    private readonly int[] _white;
    private readonly int[] _black;

    public TiffInk(Tiff tiff, TiffKind kind)
    {
        _kind = kind;
        (_white, _black) = kind.Colour switch
        {
            Photometric.MINISWHITE => (All(0), All(kind.Most)),
            Photometric.SEPARATED => (All(0), All(0)),
            Photometric.PALETTE => (All(Entry(tiff, 3 * 65535)), All(Entry(tiff, 0))),
            _ => (All(kind.Most), All(0)),
        };
        if (kind.Colour == Photometric.SEPARATED)
        {
            _black[3] = kind.Most;
        }

        // What comes after the colours says how solid a pixel is; the bar is.
        var colours = kind.Colour switch { Photometric.RGB => 3, Photometric.SEPARATED => kind.Samples, _ => 1 };
        _white.AsSpan(colours).Fill(kind.Most);
        _black.AsSpan(colours).Fill(kind.Most);
    }

    /// <summary>Puts the bar onto a run of pixels of one row.</summary>
    /// <param name="samples">Samples of the run.</param>
    /// <param name="left">Column that the run begins with.</param>
    /// <param name="columns">Pixels in it.</param>
    /// <param name="row">Row of the picture.</param>
    /// <param name="stamp">The bar.</param>
    public void Stamp(Span<byte> samples, int left, int columns, int row, BarStamp stamp)
    {
        for (var x = Math.Max(left, stamp.Box.Left); x < Math.Min(left + columns, stamp.Box.Right); x++)
        {
            var (white, black) = stamp.At(x, row);
            for (var k = 0; white + black > 0 && k < _kind.Samples; k++)
            {
                var place = ((x - left) * _kind.Samples) + k;
                TiffSample.Set(samples, place, _kind.Depth, Blend(TiffSample.Get(samples, place, _kind.Depth), k, white, black));
            }
        }
    }

    private int Blend(int value, int sample, int white, int black) => _kind.Colour == Photometric.PALETTE
        ? (white + black < 128 ? value : white > black ? _white[sample] : _black[sample])
        : (int)Math.Round((((255.0 - white - black) * value) + (white * (double)_white[sample]) + (black * (double)_black[sample])) / 255);

    private int[] All(int value) => [.. Enumerable.Repeat(value, _kind.Samples)];

    // The entry of the palette whose parts sum up nearest to a level.
    private int Entry(Tiff tiff, int level)
    {
        var map = tiff.GetField(TiffTag.COLORMAP) is { Length: >= 3 } field ? field.Take(3).Select(part => part.ToShortArray() ?? []).ToArray() : [];
        return map.Length < 3 || Array.Exists(map, part => part.Length <= _kind.Most)
            ? throw new InvalidDataException("The picture has no palette.")
            : Enumerable.Range(0, _kind.Most + 1).MinBy(i => Math.Abs(map.Sum(part => (ushort)part[i]) - level));
    }
}
