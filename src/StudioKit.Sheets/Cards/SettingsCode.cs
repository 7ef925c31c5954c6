using QRCoder;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>A QR code (ISO/IEC 18004) with its quiet zone of four modules.</summary>
internal sealed record SettingsCode(string Text) : Block
{
    /// <summary>Side of a module, which an office printer and a telephone both resolve [mm].</summary>
    public const double Module = 0.4;

    private readonly Lazy<List<System.Collections.BitArray>> _matrix = new(() => MatrixOf(Text));

    /// <summary>Width and height, quiet zone included [mm].</summary>
    public double Side => _matrix.Value.Count * Module;

    public override double? Breadth => Side;

    public override Fit Fit(double width, double height)
    {
        var left = Math.Max(0, width - Side);
        return Layout.Fit.WholeOrNothing(this, "The code", Side, height, () => new Drawing("A square code", "It holds the settings of this card as text", [.. _matrix.Value.SelectMany((row, y) => Runs(row, y, left))]).AsFigure());
    }

    // QRCoder's matrix brings the quiet zone along.
    private static List<System.Collections.BitArray> MatrixOf(string text)
    {
        using var generator = new QRCodeGenerator();
        return generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true).ModuleMatrix;
    }

    // Neighbouring dark modules of a row are one mark, so that no seam shows between them.
    private static IEnumerable<Primitive> Runs(System.Collections.BitArray row, int y, double left)
    {
        for (var x = 0; x < row.Count; x++)
        {
            var start = x;
            while (x < row.Count && row[x])
            {
                x++;
            }

            if (x > start)
            {
                yield return Polygon.Rectangle(
                    new Bounds(left + (start * Module), y * Module, left + (x * Module), (y + 1) * Module), null, Fill.Black);
            }
        }
    }
}
