using System.Runtime.InteropServices;

namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>From the samples of a PNG to eight bits each of red, green and blue; what an alpha sample or a palette makes transparent lies on white paper.</summary>
internal sealed class PngColours
{
    private readonly PngHeader _header;

    // Red, green, blue and one not used of every value of a sample that stands for a colour by itself.
    private readonly uint[] _colours;

    public PngColours(PngFile file)
    {
        _header = file.Header;
        _colours = _header.Samples > 1 || _header.Depth > 8
            ? []
            : [.. Enumerable.Range(0, _header.Most + 1).Select(value => _header.Colour == PngColour.Palette ? Entry(file, value) : Grey(value * 255 / _header.Most))];
    }

    /// <summary>Puts a row of a pass where its pixels belong.</summary>
    /// <param name="row">The row's bytes.</param>
    /// <param name="pass">The pass.</param>
    /// <param name="rgba">The picture's whole row, four bytes a pixel.</param>
    public void Spread(ReadOnlySpan<byte> row, PngPass pass, Span<byte> rgba)
    {
        var pixels = MemoryMarshal.Cast<byte, uint>(rgba);
        var hasAlpha = _header.Colour is PngColour.GreyAlpha or PngColour.RgbAlpha;
        var columns = pass.Columns(_header.Width);
        if (_colours.Length > 0)
        {
            SpreadValues(row, pass, pixels, columns);
        }
        else if (_header.Samples < 3)
        {
            var step = _header.Samples * _header.Depth / 8;
            for (var (i, x) = (0, pass.Left); i < columns; i++, x += pass.Across)
            {
                pixels[x] = Grey(hasAlpha ? OnPaper(row[i * step], row[(i * step) + (step / 2)]) : row[i * step]);
            }
        }
        else
        {
            // Of two bytes the first is worth most.
            var (size, step) = (_header.Depth / 8, _header.Samples * _header.Depth / 8);
            for (var (i, x) = (0, pass.Left); i < columns * step; i += step, x += pass.Across)
            {
                var (red, green, blue) = (row[i], row[i + size], row[i + (2 * size)]);
                pixels[x] = hasAlpha ? Colour(red, green, blue, row[i + (3 * size)]) : Colour(red, green, blue);
            }
        }
    }

    private void SpreadValues(ReadOnlySpan<byte> row, PngPass pass, Span<uint> pixels, int columns)
    {
        var (depth, most) = (_header.Depth, _header.Most);
        for (var (bit, x) = (0, pass.Left); bit < columns * depth; bit += depth, x += pass.Across)
        {
            pixels[x] = _colours[(row[bit >> 3] >> (8 - depth - (bit & 7))) & most];
        }
    }

    // Bytes in memory go from the low one on.
    private static uint Colour(int red, int green, int blue) => 0xFF000000u | ((uint)blue << 16) | ((uint)green << 8) | (uint)red;

    private static uint Colour(int red, int green, int blue, int alpha) => Colour(OnPaper(red, alpha), OnPaper(green, alpha), OnPaper(blue, alpha));

    // What there is of the colour, and for the rest the paper.
    private static int OnPaper(int value, int alpha) => 255 - (((255 - value) * alpha) + 127) / 255;

    private static uint Grey(int value) => Colour(value, value, value);

    // An entry that the palette does not have is black, as other readers take it.
    private static uint Entry(PngFile file, int value) => (3 * value) + 3 > file.Palette.Length ? Grey(0) : Colour(
        file.Palette[3 * value], file.Palette[(3 * value) + 1], file.Palette[(3 * value) + 2], value < file.Transparency.Length ? file.Transparency[value] : 255);
}
