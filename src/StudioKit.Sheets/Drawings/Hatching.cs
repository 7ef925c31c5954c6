namespace StudioKit.Sheets.Drawings;

/// <summary>Fills a closed shape with parallel lines, so that neither writer needs a pattern of its own.</summary>
internal static class Hatching
{
    private const double Spacing = 2;
    private const int CircleCorners = 72;

    public static IEnumerable<Line> Of(IReadOnlyList<Point> corners)
    {
        // Turned back by 45°, the hatch lines are level and a scan by rows finds where they cross the sides.
        var level = new Similarity(1, Math.PI / 4, 0, 0).Apply(corners);
        var back = new Similarity(1, -Math.PI / 4, 0, 0);
        var bounds = Bounds.Of(level);
        for (var y = (Math.Floor(bounds.Top / Spacing) + 0.5) * Spacing; y < bounds.Bottom; y += Spacing)
        {
            var crossings = Crossings(level, y);
            for (var i = 0; i + 1 < crossings.Count; i += 2)
            {
                yield return new Line(
                    back.Apply(new Point(crossings[i], y)), back.Apply(new Point(crossings[i + 1], y)), Stroke.Thin);
            }
        }
    }

    public static IReadOnlyList<Point> Corners(Circle circle) =>
        [.. Enumerable.Range(0, CircleCorners).Select(i => circle.Centre.Plus(
            circle.Radius * Math.Cos(2 * Math.PI * i / CircleCorners),
            circle.Radius * Math.Sin(2 * Math.PI * i / CircleCorners)))];

    private static List<double> Crossings(IReadOnlyList<Point> corners, double y)
    {
        var found = new List<double>();
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            if ((a.Y <= y) != (b.Y <= y))
            {
                found.Add(a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)));
            }
        }

        found.Sort();
        return found;
    }
}
