namespace StudioKit.Sheets.Drawings;

/// <summary>An upright rectangle that holds something, in millimetres.</summary>
/// <param name="Left">Left edge [mm].</param>
/// <param name="Top">Upper edge [mm].</param>
/// <param name="Right">Right edge [mm].</param>
/// <param name="Bottom">Lower edge [mm].</param>
public readonly record struct Bounds(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width [mm].</summary>
    public double Width => Right - Left;

    /// <summary>Height [mm].</summary>
    public double Height => Bottom - Top;

    /// <summary>The smallest rectangle that holds all points.</summary>
    /// <param name="points">At least one point [mm].</param>
    /// <returns>The rectangle [mm].</returns>
    /// <exception cref="ArgumentException">There are no points.</exception>
    public static Bounds Of(IEnumerable<Point> points)
    {
        ArgumentNullException.ThrowIfNull(points);

        var (left, top) = (double.PositiveInfinity, double.PositiveInfinity);
        var (right, bottom) = (double.NegativeInfinity, double.NegativeInfinity);
        foreach (var point in points)
        {
            (left, top) = (Math.Min(left, point.X), Math.Min(top, point.Y));
            (right, bottom) = (Math.Max(right, point.X), Math.Max(bottom, point.Y));
        }

        return left <= right ? new Bounds(left, top, right, bottom) : throw new ArgumentException("No points.", nameof(points));
    }

    /// <summary>The smallest rectangle that holds this and another.</summary>
    /// <param name="other">The other rectangle [mm].</param>
    /// <returns>The rectangle around both [mm].</returns>
    public Bounds With(Bounds other) => new(
        Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>The rectangle with a margin added on every side.</summary>
    /// <param name="margin">Margin [mm].</param>
    /// <returns>The larger rectangle [mm].</returns>
    public Bounds Grown(double margin) => new(Left - margin, Top - margin, Right + margin, Bottom + margin);
}
