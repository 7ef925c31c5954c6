using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Documents;

/// <summary>What framings see of a sheet, few enough to tell apart: where there are many, the outline of one stands for those that see nearly the same.</summary>
/// <param name="Widest">The framing whose outline is drawn.</param>
/// <param name="Others">How many more it stands for.</param>
/// <param name="Within">By how much their outlines differ from it at most, on any side.</param>
internal sealed record SeenOutlines(FramingLightPlan Widest, int Others, Length Within)
{
    private const int Most = 9;
    private const double LeastTolerance = 2;

    /// <summary>In words of the legend.</summary>
    public string Says => Others == 0 ? $"seen by {Widest.Framing}" : FormattableString.Invariant($"seen by {Widest.Framing}, {Others} more ±{PlanFormat.Millimetres(Within)}");

    /// <summary>The outlines to draw.</summary>
    /// <param name="framings">All framings.</param>
    /// <returns>Each framing on its own where they are few; else the widest outlines, with no more of them than can be told apart.</returns>
    public static IReadOnlyList<SeenOutlines> Of(IReadOnlyList<FramingLightPlan> framings)
    {
        if (framings.Count <= Most)
        {
            return [.. framings.Select(framing => new SeenOutlines(framing, 0, Length.Zero))];
        }

        List<(FramingLightPlan Framing, Bounds Bounds)> bySize =
        [
            .. framings.Where(framing => framing.Outline.Count > 0)
                .Select(framing => (framing, Around(framing)))
                .OrderByDescending(seen => seen.Item2.Width * seen.Item2.Height),
        ];
        for (var tolerance = LeastTolerance; ; tolerance *= 2)
        {
            if (Grouped(bySize, tolerance) is { Count: <= Most } outlines)
            {
                return outlines;
            }
        }
    }

    private static List<SeenOutlines> Grouped(List<(FramingLightPlan Framing, Bounds Bounds)> bySize, double tolerance)
    {
        var outlines = new List<SeenOutlines>();
        var rest = bySize;
        while (rest.Count > 0)
        {
            var widest = rest[0];
            var like = rest.ToLookup(seen => IsLike(widest.Bounds, seen.Bounds, tolerance));
            outlines.Add(new SeenOutlines(widest.Framing, like[true].Count() - 1, Length.FromMillimeters(tolerance)));
            rest = [.. like[false]];
        }

        return outlines;
    }

    private static bool IsLike(Bounds a, Bounds b, double tolerance) =>
        Math.Abs(a.Left - b.Left) <= tolerance && Math.Abs(a.Right - b.Right) <= tolerance && Math.Abs(a.Top - b.Top) <= tolerance && Math.Abs(a.Bottom - b.Bottom) <= tolerance;

    private static Bounds Around(FramingLightPlan framing) =>
        Bounds.Of([.. framing.Outline.Select(place => new Point(place.Across.Millimeters, place.AlongSheet.Millimeters))]);
}
