using UnitsNet;

namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A round body with flat ends, such as a lens.</summary>
public sealed record BarrelObstacle : Obstacle
{
    private readonly double _radius;
    private readonly double _length;
    private readonly Direction _axis;

    /// <summary>Makes a barrel.</summary>
    /// <param name="front">Middle of one flat end.</param>
    /// <param name="back">Middle of the other, elsewhere.</param>
    /// <param name="diameter">Outside diameter; &gt; 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above zero, or the ends coincide.</exception>
    public BarrelObstacle(Position front, Position back, Length diameter)
        : base(Corner(front, back, diameter, -1), Corner(front, back, diameter, 1))
    {
        (Front, Back, _axis, _length) = (front, back, Direction.From(front, back), front.DistanceTo(back));
        _radius = Guard.Positive(diameter.Meters, nameof(diameter)) / 2;
    }

    /// <summary>Middle of one flat end.</summary>
    public Position Front { get; }

    /// <summary>Middle of the other flat end.</summary>
    public Position Back { get; }

    internal override ObstacleHull Hull
    {
        get
        {
            var across = _axis.Cross(Math.Abs(_axis.Z) < 0.5 ? Direction.Up : Direction.Right);
            return new ObstacleHull(Position.Between(Front, Back, 0.5), across, _axis.Cross(across), _axis, (_radius, _radius, _length / 2));
        }
    }

    internal override Obstacle Spread(double across, double along) => new BarrelObstacle(
        Front with { X = Front.X * across, Y = Front.Y * along }, Back with { X = Back.X * across, Y = Back.Y * along }, Length.FromMeters(2 * _radius));

    // A pipe with round ends about the same axis holds it.
    internal override bool MayComeWithin(double distance, Position from, Position to) => Segments.SquareBetween(from, to, Front, Back) < (_radius + distance) * (_radius + distance);

    internal bool Holds(Position place)
    {
        var along = _axis.Dot(Front, place);
        return along > 0 && along < _length && Front.SquareTo(place) - (along * along) < _radius * _radius;
    }

    // The part of the ray between the two ends' planes, cut with the endless cylinder by its quadratic.
    private protected override bool Cuts(Position from, Position to)
    {
        var (start, step) = (_axis.Dot(Front, from), _axis.Dot(from, to));
        var (enter, leave) = Math.Abs(step) < 1e-15
            ? (start > 0 && start < _length ? (0.0, 1.0) : (1.0, 0.0))
            : (Math.Max(0, Math.Min(-start / step, (_length - start) / step)), Math.Min(1, Math.Max(-start / step, (_length - start) / step)));
        var a = from.SquareTo(to) - (step * step);
        var b = Inner(from, to) - (start * step);
        var c = Front.SquareTo(from) - (start * start) - (_radius * _radius);
        if (enter >= leave)
        {
            return false;
        }

        if (a < 1e-18)
        {
            return c < 0;
        }

        var square = (b * b) - (a * c);
        return square > 0 && Math.Max(enter, (-b - Math.Sqrt(square)) / a) < Math.Min(leave, (-b + Math.Sqrt(square)) / a);
    }

    private double Inner(Position from, Position to) =>
        ((from.X - Front.X) * (to.X - from.X)) + ((from.Y - Front.Y) * (to.Y - from.Y)) + ((from.Z - Front.Z) * (to.Z - from.Z));

    // A box that surely holds it: a radius about either end on every side.
    private static Position Corner(Position front, Position back, Length diameter, int side)
    {
        double End(double one, double other) => (side < 0 ? Math.Min(one, other) : Math.Max(one, other)) + (side * diameter.Meters / 2);
        return new Position(End(front.X, back.X), End(front.Y, back.Y), End(front.Z, back.Z));
    }
}
