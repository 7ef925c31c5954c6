namespace StudioKit.Sheets.Drawings;

/// <summary>Scales, then turns about the origin, then shifts: what can be done to a drawing without bending it.</summary>
/// <param name="Scale">Paper length over drawn length [1]; &gt; 0.</param>
/// <param name="Turn">Turn, clockwise as seen on the page [rad].</param>
/// <param name="Dx">Shift to the right [mm].</param>
/// <param name="Dy">Shift down [mm].</param>
public readonly record struct Similarity(double Scale, double Turn, double Dx, double Dy)
{
    /// <summary>Shifts only.</summary>
    /// <param name="dx">Shift to the right [mm].</param>
    /// <param name="dy">Shift down [mm].</param>
    /// <returns>The shift.</returns>
    public static Similarity Shift(double dx, double dy) => new(1, 0, dx, dy);

    /// <summary>Where a point comes to lie.</summary>
    /// <param name="point">A point [mm].</param>
    /// <returns>Its new place [mm].</returns>
    public Point Apply(Point point)
    {
        var (x, y) = (point.X * Scale, point.Y * Scale);
        if (Turn == 0)
        {
            return new Point(x + Dx, y + Dy);
        }

        var (sin, cos) = Math.SinCos(Turn);
        return new Point((x * cos) - (y * sin) + Dx, (x * sin) + (y * cos) + Dy);
    }

    internal IReadOnlyList<Point> Apply(IReadOnlyList<Point> points)
    {
        var moved = new Point[points.Count];
        for (var i = 0; i < moved.Length; i++)
        {
            moved[i] = Apply(points[i]);
        }

        return moved;
    }
}
