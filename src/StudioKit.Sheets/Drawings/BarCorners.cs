namespace StudioKit.Sheets.Drawings;

/// <summary>Corners of a straight bar drawn between two points, as a pipe is in a view.</summary>
/// <param name="FromLeft">At the start, on the left of somebody who looks along the bar on the paper.</param>
/// <param name="FromRight">At the start, on the right.</param>
/// <param name="ToLeft">At the end, on the left.</param>
/// <param name="ToRight">At the end, on the right.</param>
internal readonly record struct BarCorners(Point FromLeft, Point FromRight, Point ToLeft, Point ToRight)
{
    /// <summary>The corners of a bar.</summary>
    /// <param name="from">Middle of the start.</param>
    /// <param name="to">Middle of the end, elsewhere.</param>
    /// <param name="half">Half the bar's thickness [mm].</param>
    public static BarCorners Of(Point from, Point to, double half)
    {
        var length = from.DistanceTo(to);
        var (dx, dy) = (half * (to.Y - from.Y) / length, half * (from.X - to.X) / length);
        return new BarCorners(from.Plus(dx, dy), from.Plus(-dx, -dy), to.Plus(dx, dy), to.Plus(-dx, -dy));
    }
}
