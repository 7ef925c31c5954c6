using System.Globalization;
using StudioKit.Web.Results;

namespace StudioKit.Web.Drawing;

/// <summary>Numbers as SVG wants them.</summary>
internal static class Path
{
    /// <summary>A number to a tenth, with a point whatever the locale.</summary>
    public static string Number(double value) => Math.Round(value, 1).ToString(CultureInfo.InvariantCulture);

    /// <summary>A value with its unit as a kit writes it.</summary>
    public static string Written(double value, string unit) => unit == "°" ? Number(value) + unit : $"{Number(value)} {unit}";

    /// <summary>Points for a polygon or polyline, y turned downwards from a baseline.</summary>
    /// <param name="spots">Points whose y runs away or up.</param>
    /// <param name="baseline">Where y is 0 in the drawing, from its top.</param>
    public static string Points(IEnumerable<Spot> spots, double baseline) => string.Join(' ', spots.Select(spot => $"{Number(spot.X)},{Number(baseline - spot.Y)}"));
}
