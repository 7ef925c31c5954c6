using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Guide number of a zoom head between the settings its maker lists.</summary>
public static class GuideNumberTable
{
    /// <summary>Guide number at a zoom setting, read from a table.</summary>
    /// <remarks>
    /// Between two rows ln GN is taken as linear in ln f. Beyond the ends the end row stands, with a caveat: the ideal law by
    /// solid angle says
    /// ×3.7 from 24 mm to 105 mm where real heads reach about ×2, so it must not extrapolate.
    /// </remarks>
    /// <param name="table">Guide numbers that name their zoom, in any order; at least one.</param>
    /// <param name="zoom">Zoom setting as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <returns>Guide number at full power and ISO 100 [m], with caveats.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table is empty, a row names no zoom, or the zoom is not above zero.</exception>
    [Source("CommonPractice", "interpolation in a maker's table")]
    public static GuideNumberAtZoom At(IReadOnlyList<GuideNumber> table, Length zoom)
    {
        ArgumentNullException.ThrowIfNull(table);
        var f = Guard.Positive(zoom.Meters, nameof(zoom));
        var rows = table.Select(Row).OrderBy(row => row.Zoom).ToArray();
        ArgumentOutOfRangeException.ThrowIfZero(rows.Length, nameof(table));

        var above = Array.FindIndex(rows, row => row.Zoom >= f);
        return above switch
        {
            -1 => AtEnd(rows[^1], zoom, "longer"),
            0 when rows[0].Zoom > f => AtEnd(rows[0], zoom, "shorter"),
            0 => new GuideNumberAtZoom(new GuideNumber(Length.FromMeters(rows[0].Metres), zoom), []),
            _ => new GuideNumberAtZoom(new GuideNumber(Length.FromMeters(Between(rows[above - 1], rows[above], f)), zoom), []),
        };
    }

    private static (double Zoom, double Metres) Row(GuideNumber row) => row.Zoom is { } zoom
        ? (zoom.Meters, row.AtIso100.Meters)
        : throw new ArgumentOutOfRangeException(nameof(row), "Every guide number of the table must name its zoom.");

    private static double Between((double Zoom, double Metres) low, (double Zoom, double Metres) high, double f)
    {
        var share = Math.Log(f / low.Zoom) / Math.Log(high.Zoom / low.Zoom);
        return low.Metres * Math.Pow(high.Metres / low.Metres, share);
    }

    private static GuideNumberAtZoom AtEnd((double Zoom, double Metres) end, Length zoom, string direction) => new(
        new GuideNumber(Length.FromMeters(end.Metres), zoom),
        [FormattableString.Invariant(
            $"Zoom {zoom.Millimeters:0.#} mm is {direction} than any the guide number is listed for; the number for {end.Zoom * 1000:0.#} mm stands in.")]);
}
