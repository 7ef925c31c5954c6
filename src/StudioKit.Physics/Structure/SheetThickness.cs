using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Thickness that an acrylic sheet may really have.</summary>
public static class SheetThickness
{
    /// <summary>Thinnest place that the standard allows.</summary>
    /// <param name="nominal">Nominal thickness t [m]; &gt; 0.</param>
    /// <param name="making">How the sheet was made.</param>
    /// <returns>t − (0.4 mm + 0.1t) for cast, 0.9t for extruded under 3 mm, else 0.95t [m]; never under a tenth of t.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is outside its range, or not finite.</exception>
    /// <remarks>The cast tolerance is meant for sheet from about 1.5 mm up; thinner sheet is held at a tenth of its nominal thickness.</remarks>
    [Source("ISO-7823", "thickness tolerance, parts 1 and 2")]
    public static double Least(double nominal, SheetMaking making)
    {
        var t = Guard.Positive(nominal);
        var least = making switch
        {
            SheetMaking.Cast => t - (0.4e-3 + (0.1 * t)),
            SheetMaking.Extruded => t * (t < 3e-3 ? 0.90 : 0.95),
            _ => throw new ArgumentOutOfRangeException(nameof(making), making, "Unknown way of making."),
        };
        return Math.Max(t / 10, least);
    }
}
