using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the tip of a stick's shadow lies hour by hour, from above, north up.</summary>
internal static class ShadowDrawing
{
    // On paper; the circle holds twice the shortest shadow at the least, so that the hours around noon stand apart.
    private const double Edge = 30;
    private const double ShortestEdgeMetres = 2;
    private const double LongestEdgeMetres = 12;

    /// <summary>Draws it; none where the sun never stands high enough for shadows of some metres.</summary>
    public static Drawing? Of(DayPlan day)
    {
        var hours = day.Hours.Where(hour => hour is { ShadowOverHeight: not null, Minute: < 1440 }).ToList();
        var metres = hours.Count == 0 ? double.PositiveInfinity : Math.Ceiling(Math.Max(ShortestEdgeMetres, 2 * hours.Min(hour => hour.ShadowOverHeight!.Value)));
        return metres > LongestEdgeMetres ? null : new Drawing(
            "Where the shadow of an upright stick falls, from above",
            "Tip of an upright stick's shadow at each full hour, north up; each circle is once more the stick's height.",
            [.. Circles((int)metres), .. Rose(), .. hours.Where(hour => hour.ShadowOverHeight <= metres).SelectMany(hour => Shadow(hour, Edge / metres)), new Circle(default, 0.8, null, Fill.Black)]);
    }

    private static IEnumerable<Primitive> Circles(int metres) => Enumerable.Range(1, metres).Select(metre => (Primitive)new Circle(default, Edge * metre / metres, Stroke.Thin));

    private static IEnumerable<Primitive> Rose()
    {
        const double beyond = Edge + 4.5;
        yield return new Label(new Point(0, -beyond), "north", 8, TextAnchor.Middle, Weight: TextWeight.Bold);
        yield return new Label(new Point(0, beyond), "south", 8, TextAnchor.Middle, TextRise.Top);
        yield return new Label(new Point(beyond, 0), "east", 8, TextAnchor.Start, TextRise.Middle);
        yield return new Label(new Point(-beyond, 0), "west", 8, TextAnchor.End, TextRise.Middle);
    }

    private static IEnumerable<Primitive> Shadow(DayHour hour, double millimetresPerMetre)
    {
        var (east, north) = Math.SinCos(hour.ShadowDirection.Radians);
        Point At(double millimetres) => new(east * millimetres, -north * millimetres);
        var length = hour.ShadowOverHeight!.Value * millimetresPerMetre;
        yield return new Line(default, At(length), Stroke.Edge);
        yield return new Label(At(length + 2.5), FormattableString.Invariant($"{hour.Minute / 60}"), 8, TextAnchor.Middle, TextRise.Middle);
    }
}
