using System.Globalization;
using StudioKit.Web.Results;

namespace StudioKit.Web.Drawing;

/// <summary>Numbers as SVG wants them.</summary>
internal static class Path
{
    /// <summary>A number to a tenth, with a point whatever the locale.</summary>
    /// <remarks>Whole numbers are written many times faster than others, and a drawing has thousands of them.</remarks>
    public static string Number(double value)
    {
        var tenths = Math.Round(value * 10);
        if (!(Math.Abs(tenths) < int.MaxValue))
        {
            return Math.Round(value, 1).ToString(CultureInfo.InvariantCulture);
        }

        var (whole, tenth) = Math.DivRem((int)Math.Abs(tenths), 10);
        var sign = tenths < 0 ? "-" : "";
        return tenth == 0
            ? sign + whole.ToString(CultureInfo.InvariantCulture)
            : string.Concat(sign, whole.ToString(CultureInfo.InvariantCulture), ".", tenth.ToString(CultureInfo.InvariantCulture));
    }

    /// <summary>A value with its unit as a kit writes it.</summary>
    public static string Written(double value, string unit) => unit == "°" ? Number(value) + unit : $"{Number(value)} {unit}";

    /// <summary>An arrowhead that shows a way in which a mark can be moved.</summary>
    /// <param name="x">Middle of its foot across the drawing.</param>
    /// <param name="y">Middle of its foot down the drawing.</param>
    /// <param name="towardsX">Where it points, across; of length 1 together with the next.</param>
    /// <param name="towardsY">Where it points, down.</param>
    /// <param name="size">From foot to tip.</param>
    public static string Arrow(double x, double y, double towardsX, double towardsY, double size)
    {
        var (sideX, sideY) = (-towardsY * size * 0.7, towardsX * size * 0.7);
        return $"M{Number(x + sideX)} {Number(y + sideY)}L{Number(x + (towardsX * size))} {Number(y + (towardsY * size))}L{Number(x - sideX)} {Number(y - sideY)}z";
    }

    /// <summary>Points for a polygon or polyline, y turned downwards from a baseline.</summary>
    /// <param name="spots">Points whose y runs away or up.</param>
    /// <param name="baseline">Where y is 0 in the drawing, from its top.</param>
    public static string Points(IEnumerable<Spot> spots, double baseline) => string.Join(' ', spots.Select(spot => $"{Number(spot.X)},{Number(baseline - spot.Y)}"));
}
