using System.Buffers.Binary;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>Puts a bar onto the samples of a PNG, in their own depth and colours.</summary>
internal sealed class PngInk
{
    private readonly PngHeader _header;
    private readonly int[] _transparent;
    private readonly int _white;
    private readonly int _black;

    public PngInk(PngFile file)
    {
        _header = file.Header;
        Palette = file.Palette;
        if (_header.Colour == PngColour.Palette)
        {
            _white = Entry(file.Transparency, 255);
            _black = Entry(file.Transparency, 0);
        }

        // Of a picture without an alpha sample, one colour may count as transparent: two bytes a sample.
        _transparent = _header.Colour is PngColour.Grey or PngColour.Rgb && file.Transparency.Length >= 2 * _header.Samples
            ? [.. Enumerable.Range(0, _header.Samples).Select(i => (file.Transparency[2 * i] << 8) | file.Transparency[(2 * i) + 1])]
            : [];
    }

    /// <summary>The palette with white and black in it, where there is room for them.</summary>
    public byte[] Palette { get; private set; }

    /// <summary>Puts the bar onto a row of a pass.</summary>
    public void Stamp(Span<byte> row, PngPass pass, int y, BarStamp stamp)
    {
        Span<int> samples = stackalloc int[4];
        for (var i = Math.Max(0, (stamp.Box.Left - pass.Left) / pass.Across); i < pass.Columns(_header.Width); i++)
        {
            var x = pass.Left + (i * pass.Across);
            if (x >= stamp.Box.Right)
            {
                return;
            }

            var (white, black) = stamp.At(x, y);
            if (white + black > 0)
            {
                Stamp(row, i, samples[.._header.Samples], white, black);
            }
        }
    }

    private void Stamp(Span<byte> row, int place, Span<int> samples, int white, int black)
    {
        for (var k = 0; k < samples.Length; k++)
        {
            samples[k] = Get(row, (place * samples.Length) + k);
        }

        if (_header.Colour == PngColour.Palette)
        {
            samples[0] = white + black < 128 ? samples[0] : white > black ? _white : _black;
        }
        else
        {
            Blend(samples, white, black);
        }

        for (var k = 0; k < samples.Length; k++)
        {
            Set(row, (place * samples.Length) + k, samples[k]);
        }
    }

    private void Blend(Span<int> samples, int white, int black)
    {
        var colours = _header.Colour is PngColour.GreyAlpha or PngColour.RgbAlpha ? samples.Length - 1 : samples.Length;

        // What is see-through weighs less against the bar, which is not.
        var solid = colours == samples.Length ? 1.0 : samples[colours] / (double)_header.Most;
        var (left, cover) = ((255 - white - black) / 255.0 * solid, (white + black) / 255.0);
        for (var k = 0; k < colours; k++)
        {
            samples[k] = (int)Math.Round(((left * samples[k]) + (white / 255.0 * _header.Most)) / (left + cover));
        }

        if (colours < samples.Length)
        {
            samples[colours] = (int)Math.Round((left + cover) * _header.Most);
        }
        else if (_transparent.Length > 0 && samples.SequenceEqual(_transparent))
        {
            samples[^1] += samples[^1] == _header.Most ? -1 : 1;
        }
    }

    private int Get(ReadOnlySpan<byte> row, int place) => _header.Depth switch
    {
        16 => BinaryPrimitives.ReadUInt16BigEndian(row[(2 * place)..]),
        8 => row[place],
        _ => PngSample.Get(row, place, _header.Depth),
    };

    private void Set(Span<byte> row, int place, int value)
    {
        switch (_header.Depth)
        {
            case 16:
                BinaryPrimitives.WriteUInt16BigEndian(row[(2 * place)..], (ushort)value);
                break;
            case 8:
                row[place] = (byte)value;
                break;
            default:
                PngSample.Set(row, place, _header.Depth, value);
                break;
        }
    }

    // The entry that is a level of grey; one more where there is room; else the one nearest in brightness.
    private int Entry(byte[] transparency, byte level)
    {
        var count = Palette.Length / 3;
        var solid = Enumerable.Range(0, count).Where(i => i >= transparency.Length || transparency[i] == 255).ToList();
        var found = solid.FindIndex(i => Palette.AsSpan(3 * i, 3).IndexOfAnyExcept(level) < 0);
        if (found >= 0)
        {
            return solid[found];
        }

        if (count <= _header.Most)
        {
            Palette = [.. Palette, level, level, level];
            return count;
        }

        return (solid.Count > 0 ? solid : [.. Enumerable.Range(0, count)]).MinBy(i => Math.Abs(Palette.AsSpan(3 * i, 3).ToArray().Sum(part => part) - (3 * level)));
    }
}
