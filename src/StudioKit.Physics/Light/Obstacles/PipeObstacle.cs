using System.Numerics;
using UnitsNet;

namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A round frame member between two points of its centre line.</summary>
public sealed record PipeObstacle : Obstacle
{
    private readonly double _radius;

    /// <summary>Makes a frame member.</summary>
    /// <param name="start">One end of the centre line.</param>
    /// <param name="end">The other end.</param>
    /// <param name="diameter">Outside diameter; &gt; 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above zero.</exception>
    public PipeObstacle(Position start, Position end, Length diameter)
        : base(Least(start, end, diameter.Meters / 2), Most(start, end, diameter.Meters / 2))
    {
        (Start, End) = (start, end);
        _radius = Guard.Positive(diameter.Meters, nameof(diameter)) / 2;
    }

    /// <summary>One end of the centre line.</summary>
    public Position Start { get; }

    /// <summary>The other end of the centre line.</summary>
    public Position End { get; }

    /// <summary>Outside diameter.</summary>
    public Length Diameter => Length.FromMeters(2 * _radius);

    internal override ObstacleHull Hull
    {
        get
        {
            var length = Start.DistanceTo(End);
            var axis = length > 0 ? Direction.From(Start, End) : Direction.Up;
            var across = axis.Cross(Math.Abs(axis.Z) < 0.5 ? Direction.Up : Direction.Right);
            return new ObstacleHull(Position.Between(Start, End, 0.5), across, axis.Cross(across), axis, (_radius, _radius, _radius + (length / 2)));
        }
    }

    internal override Obstacle Spread(double across, double along) => new PipeObstacle(
        Start with { X = Start.X * across, Y = Start.Y * along }, End with { X = End.X * across, Y = End.Y * along }, Diameter);

    internal override bool MayComeWithin(double distance, Position from, Position to) => SquareBetween(from, to) < (_radius + distance) * (_radius + distance);

    // A pipe blocks a ray that passes its centre line nearer than its radius (round ends included).
    private protected override bool Cuts(Position from, Position to) => SquareBetween(from, to) < _radius * _radius;

    private protected override Vector<long> Cuts(Position from, in PositionVector to) =>
        Vector.LessThan(SquareBetween(from, to), new Vector<double>(_radius * _radius));

    private static Position Least(Position start, Position end, double radius) =>
        new(Math.Min(start.X, end.X) - radius, Math.Min(start.Y, end.Y) - radius, Math.Min(start.Z, end.Z) - radius);

    private static Position Most(Position start, Position end, double radius) =>
        new(Math.Max(start.X, end.X) + radius, Math.Max(start.Y, end.Y) + radius, Math.Max(start.Z, end.Z) + radius);

    private double SquareBetween(Position from, Position to) => Segments.SquareBetween(from, to, Start, End);

    // The same for several ways at once, in the same order of sums and products, so that each comes out alike in every bit.
    private Vector<double> SquareBetween(Position from, in PositionVector to)
    {
        var (dx, dy, dz) = (to.X - new Vector<double>(from.X), to.Y - new Vector<double>(from.Y), to.Z - new Vector<double>(from.Z));
        var (a, e) = ((dx * dx) + (dy * dy) + (dz * dz), Start.SquareTo(End));
        var (b, c) = (Inner(dx, dy, dz, Start, End), Inner(dx, dy, dz, Start, from));
        var f = new Vector<double>(Segments.Inner(Start, End, Start, from));
        var determinant = (a * e) - (b * b);
        var s = Vector.ConditionalSelect(Vector.GreaterThan(determinant, Segments.Parallel * a * e), Share(((b * f) - (c * e)) / determinant), Vector<double>.Zero);
        var t = e > 0 ? ((b * s) + f) / new Vector<double>(e) : Vector<double>.Zero;
        var isBeyond = Vector.LessThan(t, Vector<double>.Zero) | Vector.GreaterThan(t, Vector<double>.One);
        if (!Vector.EqualsAll(isBeyond, Vector<long>.Zero))
        {
            t = Share(t);
            var nearest = Vector.ConditionalSelect(Vector.GreaterThan(a, Vector<double>.Zero), Share(((b * t) - c) / a), Vector<double>.Zero);
            s = Vector.ConditionalSelect(isBeyond, nearest, s);
        }

        var (x, y, z) = (Between(Start.X, End.X, t) - Way(from.X, dx, s), Between(Start.Y, End.Y, t) - Way(from.Y, dy, s), Between(Start.Z, End.Z, t) - Way(from.Z, dz, s));
        return (x * x) + (y * y) + (z * z);
    }

    private static Vector<double> Inner(Vector<double> dx, Vector<double> dy, Vector<double> dz, Position from, Position to) =>
        (dx * (to.X - from.X)) + (dy * (to.Y - from.Y)) + (dz * (to.Z - from.Z));

    private static Vector<double> Share(Vector<double> value) => Vector.Max(Vector<double>.Zero, Vector.Min(value, Vector<double>.One));

    private static Vector<double> Between(double from, double to, Vector<double> share) => Way(from, new Vector<double>(to - from), share);

    private static Vector<double> Way(double from, Vector<double> step, Vector<double> share) => new Vector<double>(from) + (step * share);
}
