using UnitsNet;

namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A round frame member between two points of its centre line.</summary>
public sealed record PipeObstacle : Obstacle
{
    private readonly double _radius;
    private readonly Position _least;
    private readonly Position _most;

    /// <summary>Makes a frame member.</summary>
    /// <param name="start">One end of the centre line.</param>
    /// <param name="end">The other end.</param>
    /// <param name="diameter">Outside diameter; &gt; 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above zero.</exception>
    public PipeObstacle(Position start, Position end, Length diameter)
    {
        (Start, End) = (start, end);
        _radius = Guard.Positive(diameter.Meters, nameof(diameter)) / 2;
        _least = new Position(Math.Min(start.X, end.X) - _radius, Math.Min(start.Y, end.Y) - _radius, Math.Min(start.Z, end.Z) - _radius);
        _most = new Position(Math.Max(start.X, end.X) + _radius, Math.Max(start.Y, end.Y) + _radius, Math.Max(start.Z, end.Z) + _radius);
    }

    /// <summary>One end of the centre line.</summary>
    public Position Start { get; }

    /// <summary>The other end of the centre line.</summary>
    public Position End { get; }

    /// <summary>Outside diameter.</summary>
    public Length Diameter => Length.FromMeters(2 * _radius);

    // A pipe blocks a ray that passes its centre line nearer than its radius (round ends included).
    internal override bool Blocks(Position from, Position to) => Near(from, to) && SquareBetween(from, to) < _radius * _radius;

    // Most rays pass a pipe's bounding box by, which is quicker to see than the distance.
    private bool Near(Position from, Position to) =>
        Overlaps(from.X, to.X, _least.X, _most.X) && Overlaps(from.Y, to.Y, _least.Y, _most.Y) && Overlaps(from.Z, to.Z, _least.Z, _most.Z);

    private static bool Overlaps(double from, double to, double least, double most) =>
        (from >= least || to >= least) && (from <= most || to <= most);

    // Least squared distance of two segments: free minimum on both lines, clamped to one, then to the other.
    private double SquareBetween(Position from, Position to)
    {
        var (a, e, b) = (from.SquareTo(to), Start.SquareTo(End), Inner(from, to, Start, End));
        var (c, f) = (Inner(from, to, Start, from), Inner(Start, End, Start, from));
        var determinant = (a * e) - (b * b);
        var s = determinant > 1e-12 * a * e ? Math.Clamp(((b * f) - (c * e)) / determinant, 0, 1) : 0;
        var t = e > 0 ? ((b * s) + f) / e : 0;
        if (t is < 0 or > 1)
        {
            t = Math.Clamp(t, 0, 1);
            s = a > 0 ? Math.Clamp(((b * t) - c) / a, 0, 1) : 0;
        }

        return Position.Between(from, to, s).SquareTo(Position.Between(Start, End, t));
    }

    private static double Inner(Position a, Position b, Position c, Position d) =>
        ((b.X - a.X) * (d.X - c.X)) + ((b.Y - a.Y) * (d.Y - c.Y)) + ((b.Z - a.Z) * (d.Z - c.Z));
}
