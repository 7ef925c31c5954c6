namespace StudioKit.Sheets.Drawings;

/// <summary>How a line is drawn; widths are on paper and do not scale with the drawing.</summary>
/// <param name="WidthMm">Line width [mm]; &gt; 0.</param>
/// <param name="Style">How the line is broken up.</param>
public readonly record struct Stroke(double WidthMm, LineStyle Style = LineStyle.Solid)
{
    /// <summary>Visible edges, 0.35 mm.</summary>
    public static Stroke Edge { get; } = new(0.35);

    /// <summary>What matters most, 0.7 mm.</summary>
    public static Stroke Heavy { get; } = new(0.7);

    /// <summary>Dimensions, leaders and rulings, 0.18 mm.</summary>
    public static Stroke Thin { get; } = new(0.18);

    /// <summary>Hidden edges, 0.25 mm, dashed.</summary>
    public static Stroke Hidden { get; } = new(0.25, LineStyle.Dashed);

    /// <summary>Centre lines, 0.18 mm, long dash and dot.</summary>
    public static Stroke Centre { get; } = new(0.18, LineStyle.Chain);

    /// <summary>Lengths of dash and gap by turns [mm]; empty for an unbroken line.</summary>
    internal IReadOnlyList<double> DashesMm => Style switch
    {
        LineStyle.Dashed => [2.5, 1.2],
        LineStyle.Chain => [6, 1, 0.6, 1],
        _ => [],
    };
}
