namespace StudioKit.Physics.Light;

/// <summary>A direction in the studio's axes, always of length one.</summary>
public readonly record struct Direction
{
    private Direction(double x, double y, double z) => (X, Y, Z) = (x, y, z);

    /// <summary>Straight up.</summary>
    public static Direction Up { get; } = new(0, 0, 1);

    /// <summary>To the camera's right.</summary>
    public static Direction Right { get; } = new(1, 0, 0);

    /// <summary>Away from the camera.</summary>
    public static Direction Back { get; } = new(0, 1, 0);

    /// <summary>Share to the right [1]; −1 to 1.</summary>
    public double X { get; }

    /// <summary>Share away from the camera [1]; −1 to 1.</summary>
    public double Y { get; }

    /// <summary>Share upwards [1]; −1 to 1.</summary>
    public double Z { get; }

    /// <summary>Makes a direction from any vector that is not zero.</summary>
    /// <param name="x">Part to the right [1]; finite.</param>
    /// <param name="y">Part away from the camera [1]; finite.</param>
    /// <param name="z">Part upwards [1]; finite.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part is not finite, or all are zero.</exception>
    public static Direction Of(double x, double y, double z)
    {
        var length = Guard.Positive(Math.Sqrt((x * x) + (y * y) + (z * z)), nameof(z));
        return new Direction(x / length, y / length, z / length);
    }

    /// <summary>From one point to another.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The points coincide.</exception>
    public static Direction From(Position start, Position end) => Of(end.X - start.X, end.Y - start.Y, end.Z - start.Z);

    /// <summary>The opposite direction.</summary>
    public static Direction operator -(Direction direction) => new(-direction.X, -direction.Y, -direction.Z);

    internal double Dot(Direction other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    internal double Dot(Position from, Position to) =>
        (X * (to.X - from.X)) + (Y * (to.Y - from.Y)) + (Z * (to.Z - from.Z));

    internal Direction Cross(Direction other) =>
        Of((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    internal Direction TurnedAbout(Direction pivot, double angle)
    {
        var (sin, cos) = Math.SinCos(angle);
        var along = pivot.Dot(this) * (1 - cos);
        return Of(
            (X * cos) + (((pivot.Y * Z) - (pivot.Z * Y)) * sin) + (pivot.X * along),
            (Y * cos) + (((pivot.Z * X) - (pivot.X * Z)) * sin) + (pivot.Y * along),
            (Z * cos) + (((pivot.X * Y) - (pivot.Y * X)) * sin) + (pivot.Z * along));
    }
}
