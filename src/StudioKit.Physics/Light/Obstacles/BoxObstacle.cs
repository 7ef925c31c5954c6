using UnitsNet;

namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A box-shaped body such as a flash behind its bright window.</summary>
public sealed record BoxObstacle : Obstacle
{
    private readonly double _halfWidth;
    private readonly double _halfHeight;
    private readonly double _halfDepth;

    /// <summary>Makes a box.</summary>
    /// <param name="centre">Centre of the box.</param>
    /// <param name="orientation">How it lies.</param>
    /// <param name="width">Size across; &gt; 0 m.</param>
    /// <param name="height">Size along; &gt; 0 m.</param>
    /// <param name="depth">Size in the direction of the axis; &gt; 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not above zero.</exception>
    public BoxObstacle(Position centre, Orientation orientation, Length width, Length height, Length depth)
        : base(Corner(centre, orientation, (width, height, depth), -1), Corner(centre, orientation, (width, height, depth), 1))
    {
        (Centre, Orientation) = (centre, orientation);
        _halfWidth = Guard.Positive(width.Meters, nameof(width)) / 2;
        _halfHeight = Guard.Positive(height.Meters, nameof(height)) / 2;
        _halfDepth = Guard.Positive(depth.Meters, nameof(depth)) / 2;
    }

    /// <summary>Centre of the box.</summary>
    public Position Centre { get; }

    /// <summary>How it lies.</summary>
    public Orientation Orientation { get; }

    internal override ObstacleHull Hull => new(Centre, Orientation.Across, Orientation.Along, Orientation.Axis, (_halfWidth, _halfHeight, _halfDepth));

    internal override Obstacle Spread(double across, double along) => new BoxObstacle(
        Centre with { X = Centre.X * across, Y = Centre.Y * along }, Orientation,
        Length.FromMeters(2 * _halfWidth), Length.FromMeters(2 * _halfHeight), Length.FromMeters(2 * _halfDepth));

    private protected override bool Cuts(Position from, Position to)
    {
        var (enter, leave) = (0.0, 1.0);
        return Narrow(Orientation.Across, _halfWidth, from, to, ref enter, ref leave)
            && Narrow(Orientation.Along, _halfHeight, from, to, ref enter, ref leave)
            && Narrow(Orientation.Axis, _halfDepth, from, to, ref enter, ref leave)
            && leave > enter;
    }

    // Outermost corner along the studio's axes, a micrometre further out so that rounding never hides a ray that grazes the box.
    private static Position Corner(Position centre, Orientation orientation, (Length Across, Length Along, Length Axis) size, int side)
    {
        double Reach(Func<Direction, double> share) => side * (1e-6 + (0.5 * (
            (Math.Abs(share(orientation.Across)) * size.Across.Meters)
            + (Math.Abs(share(orientation.Along)) * size.Along.Meters)
            + (Math.Abs(share(orientation.Axis)) * size.Axis.Meters))));

        return new Position(
            centre.X + Reach(direction => direction.X), centre.Y + Reach(direction => direction.Y), centre.Z + Reach(direction => direction.Z));
    }

    // Keeps of the ray what lies between two opposite faces.
    private bool Narrow(Direction normal, double half, Position from, Position to, ref double enter, ref double leave)
    {
        var start = normal.Dot(Centre, from);
        var step = normal.Dot(from, to);
        if (Math.Abs(step) < 1e-15)
        {
            return Math.Abs(start) < half;
        }

        var (one, other) = ((-half - start) / step, (half - start) / step);
        enter = Math.Max(enter, Math.Min(one, other));
        leave = Math.Min(leave, Math.Max(one, other));
        return enter < leave;
    }
}
