using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building;

/// <summary>Cuts lines at the edges of a rectangle, so that a template can be spread over pages.</summary>
internal static class ClippedLines
{
    // Chords this short stray from a radius of 50 mm by under 0.01 mm.
    private const double Chord = 2;

    /// <summary>What of a drawing's lines lies in a rectangle.</summary>
    public static IReadOnlyList<Line> Of(IEnumerable<Primitive> marks, Bounds window) =>
        [.. marks.SelectMany(Lines).Select(line => Clip(line, window)).OfType<Line>()];

    private static IEnumerable<Line> Lines(Primitive mark) => mark switch
    {
        Line line => [line],
        Polyline line => Chain(line.Points, line.Stroke),
        Polygon polygon when polygon.Stroke is { } stroke => Chain([.. polygon.Points, polygon.Points[0]], stroke),
        Circle circle when circle.Stroke is { } stroke => Lines(new Arc(circle.Centre, circle.Radius, 0, 2 * Math.PI, stroke)),
        Arc arc => Chain(Points(arc), arc.Stroke),
        _ => [],
    };

    private static IEnumerable<Line> Chain(IReadOnlyList<Point> points, Stroke stroke) =>
        Enumerable.Range(1, points.Count - 1).Select(i => new Line(points[i - 1], points[i], stroke));

    private static Point[] Points(Arc arc)
    {
        var steps = Math.Max(8, (int)Math.Ceiling(Math.Abs(arc.Sweep) * arc.Radius / Chord));
        return [.. Enumerable.Range(0, steps + 1).Select(i => arc.Centre.Plus(
            arc.Radius * Math.Cos(arc.Start + (arc.Sweep * i / steps)), arc.Radius * Math.Sin(arc.Start + (arc.Sweep * i / steps))))];
    }

    // The line's parameter runs from 0 to 1; each edge of the window narrows what is left of it (method of Liang and Barsky).
    private static Line? Clip(Line line, Bounds window)
    {
        var (dx, dy) = (line.To.X - line.From.X, line.To.Y - line.From.Y);
        var (start, end) = (0.0, 1.0);
        foreach (var (towards, room) in new[]
        {
            (-dx, line.From.X - window.Left), (dx, window.Right - line.From.X), (-dy, line.From.Y - window.Top), (dy, window.Bottom - line.From.Y),
        })
        {
            if (towards == 0 && room < 0)
            {
                return null;
            }

            (start, end) = towards < 0 ? (Math.Max(start, room / towards), end) : towards > 0 ? (start, Math.Min(end, room / towards)) : (start, end);
        }

        return start >= end ? null : line with { From = line.From.Plus(start * dx, start * dy), To = line.From.Plus(end * dx, end * dy) };
    }
}
