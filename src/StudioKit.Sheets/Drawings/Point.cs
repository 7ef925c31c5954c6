namespace StudioKit.Sheets.Drawings;

/// <summary>A place on a drawing: x to the right, y down, in millimetres.</summary>
/// <param name="X">Distance to the right of the origin [mm].</param>
/// <param name="Y">Distance below the origin [mm].</param>
public readonly record struct Point(double X, double Y)
{
    /// <summary>Moves the point.</summary>
    /// <param name="dx">Distance to the right [mm].</param>
    /// <param name="dy">Distance down [mm].</param>
    /// <returns>The moved point [mm].</returns>
    public Point Plus(double dx, double dy) => new(X + dx, Y + dy);

    /// <summary>Straight distance to another point.</summary>
    /// <param name="other">The other point [mm].</param>
    /// <returns>Distance [mm].</returns>
    public double DistanceTo(Point other) => double.Hypot(other.X - X, other.Y - Y);
}
