using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the tip of a stick's shadow lies hour by hour, from above, north up.</summary>
internal static class ShadowDrawing
{
    // On paper, for a stick of one metre.
    private const double MillimetresPerMetre = 10;
    private const double Longest = 4;

    /// <summary>Draws it; none where the sun never stands high enough for shadows of some metres.</summary>
    public static Drawing? Of(DayPlan day)
    {
        var tips = day.Hours.Where(hour => hour is { ShadowOverHeight: <= Longest, Minute: < 1440 }).ToList();
        return tips.Count == 0 ? null : new Drawing(
            "Where the shadow of a stick of 1 m falls, from above",
            FormattableString.Invariant($"From above, north up: the stick of 1 m in the middle, the tip of its shadow at each hour; circles every metre. What is n metres high throws n times as far."),
            [.. Circles(), .. Rose(), .. tips.SelectMany(Shadow), new Circle(default, 0.8, null, Fill.Black)]);
    }

    private static IEnumerable<Primitive> Circles() => Enumerable.Range(1, (int)Longest)
        .Select(metres => (Primitive)new Circle(default, metres * MillimetresPerMetre, Stroke.Thin));

    private static IEnumerable<Primitive> Rose()
    {
        const double edge = Longest * MillimetresPerMetre;
        yield return new Label(new Point(0, -edge - 1.5), "north", 8, TextAnchor.Middle, Weight: TextWeight.Bold);
        yield return new Label(new Point(0, edge + 1.5), "south", 8, TextAnchor.Middle, TextRise.Top);
        yield return new Label(new Point(edge + 1.5, 0), "east", 8, TextAnchor.Start, TextRise.Middle);
        yield return new Label(new Point(-edge - 1.5, 0), "west", 8, TextAnchor.End, TextRise.Middle);
    }

    private static IEnumerable<Primitive> Shadow(DayHour hour)
    {
        var (east, north) = Math.SinCos(hour.ShadowDirection.Radians);
        Point At(double millimetres) => new(east * millimetres, -north * millimetres);
        var length = hour.ShadowOverHeight!.Value * MillimetresPerMetre;
        yield return new Line(default, At(length), Stroke.Edge);
        yield return new Label(At(length + 2.8), DayText.Time(hour.Minute), 7, TextAnchor.Middle, TextRise.Middle);
    }
}
