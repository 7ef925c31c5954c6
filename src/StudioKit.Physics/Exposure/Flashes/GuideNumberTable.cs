using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Guide number of a zoom head between the settings its maker lists.</summary>
public static class GuideNumberTable
{
    private static readonly Length Widest = Length.FromMillimeters(24);
    private static readonly Length Longest = Length.FromMillimeters(200);

    /// <summary>Guide number at a zoom setting, read from a table.</summary>
    /// <remarks>
    /// Between two rows ln GN is taken as linear in ln f. Beyond the ends the light lies somewhere between no change and the ideal law, which spreads
    /// the same flux over the solid angle covered: that says ×3.7 from 24 mm to 105 mm where real heads reach about ×2. The geometric middle is taken,
    /// half the ideal law's stops, with a doubt as large, which reaches to both ends.
    /// </remarks>
    /// <param name="table">Guide numbers that name their zoom, in any order; at least one.</param>
    /// <param name="zoom">Zoom setting as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <returns>Guide number at full power and ISO 100 [m], with its doubt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The table is empty, a row names no zoom, or the zoom is not above zero.</exception>
    [Source("CommonPractice", "interpolation in a maker's table; beyond it half the ideal law by solid angle")]
    public static GuideNumberAtZoom At(IReadOnlyList<GuideNumber> table, Length zoom)
    {
        ArgumentNullException.ThrowIfNull(table);
        var f = Guard.Positive(zoom.Meters, nameof(zoom));
        var rows = table.Select(Row).OrderBy(row => row.Zoom).ToArray();
        ArgumentOutOfRangeException.ThrowIfZero(rows.Length, nameof(table));

        var above = Array.FindIndex(rows, row => row.Zoom >= f);
        return above switch
        {
            -1 => Beyond(rows[^1], zoom),
            0 when rows[0].Zoom > f => Beyond(rows[0], zoom),
            0 => new GuideNumberAtZoom(Made(rows[0].Metres, zoom)),
            _ => new GuideNumberAtZoom(Made(Between(rows[above - 1], rows[above], f), zoom)),
        };
    }

    /// <summary>A guide number that names no zoom, used at one: it stands as it is, in doubt by half of what the ideal law makes of any zoom that it may be for.</summary>
    /// <param name="unplaced">The guide number.</param>
    /// <param name="zoom">Zoom setting as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <returns>Guide number at full power and ISO 100 [m], with its doubt.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The zoom is not above zero.</exception>
    [Source("CommonPractice", "heads zoom from 24 mm to 200 mm, and makers quote any of them")]
    public static GuideNumberAtZoom Unplaced(GuideNumber unplaced, Length zoom) => new(new GuideNumber(unplaced.AtIso100, zoom))
    {
        MadeFrom = unplaced,
        Doubt = new Stops(Math.Max(Math.Abs(HalfIdeal(Widest, zoom)), Math.Abs(HalfIdeal(Longest, zoom)))),
    };

    private static (double Zoom, double Metres) Row(GuideNumber row) => row.Zoom is { } zoom
        ? (zoom.Meters, row.AtIso100.Meters)
        : throw new ArgumentOutOfRangeException(nameof(row), "Every guide number of the table must name its zoom.");

    private static double Between((double Zoom, double Metres) low, (double Zoom, double Metres) high, double f)
    {
        var share = Math.Log(f / low.Zoom) / Math.Log(high.Zoom / low.Zoom);
        return low.Metres * Math.Pow(high.Metres / low.Metres, share);
    }

    private static GuideNumberAtZoom Beyond((double Zoom, double Metres) end, Length zoom)
    {
        var listed = Length.FromMeters(end.Zoom);
        var half = HalfIdeal(listed, zoom);
        return new GuideNumberAtZoom(Made(end.Metres * Math.Pow(2, half / 2), zoom))
        {
            MadeFrom = new GuideNumber(Length.FromMeters(end.Metres), listed),
            Doubt = new Stops(Math.Abs(half)),
        };
    }

    // Half the stops that the ideal law gives for going from one zoom to another.
    private static double HalfIdeal(Length from, Length to) => Math.Log2(BeamCoverage.SolidAngle(from) / BeamCoverage.SolidAngle(to)) / 2;

    private static GuideNumber Made(double metres, Length zoom) => new(Length.FromMeters(metres), zoom);
}
