using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>A point of the studio: x to the camera's right, y away from the camera, z up from the ground, all [m].</summary>
/// <remarks>The origin lies on the ground under the centre of the panel.</remarks>
/// <param name="X">To the right of the panel's centre, as the camera sees it [m].</param>
/// <param name="Y">Beyond the panel's centre, away from the camera [m].</param>
/// <param name="Z">Above the ground [m].</param>
public readonly record struct Position(double X, double Y, double Z)
{
    /// <summary>Whether all three coordinates are finite.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    /// <summary>Moves a point along a direction.</summary>
    /// <param name="direction">Where to.</param>
    /// <param name="distance">How far [m].</param>
    public Position Along(Direction direction, double distance) =>
        new(X + (direction.X * distance), Y + (direction.Y * distance), Z + (direction.Z * distance));

    /// <summary>Distance to another point.</summary>
    /// <param name="other">The other point.</param>
    /// <returns>Straight distance [m].</returns>
    [Source("Derived", "Pythagoras")]
    public double DistanceTo(Position other) => Math.Sqrt(SquareTo(other));

    internal double SquareTo(Position other) =>
        ((other.X - X) * (other.X - X)) + ((other.Y - Y) * (other.Y - Y)) + ((other.Z - Z) * (other.Z - Z));

    /// <summary>A point of the straight line through two others.</summary>
    /// <param name="from">One point.</param>
    /// <param name="to">The other point.</param>
    /// <param name="share">How far along, as a share of the way [1]; 0 is the one, 1 the other.</param>
    [Source("Derived", "straight line between two points")]
    public static Position Between(Position from, Position to, double share) => new(
        from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share), from.Z + ((to.Z - from.Z) * share));
}
