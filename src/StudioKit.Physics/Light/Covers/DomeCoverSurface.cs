namespace StudioKit.Physics.Light.Covers;

/// <summary>A cap of a sphere, as wide at its foot as given and as high.</summary>
internal sealed class DomeCoverSurface : CoverSurface
{
    private readonly double _radius;
    private readonly Position _centre;

    public DomeCoverSurface(double foot, double height)
        : base(CoverFace.Round)
    {
        _radius = ((foot * foot) + (height * height)) / (2 * height);
        _centre = new Position(0, 0, height - _radius);
    }

    /// <remarks>Light, eye and the sphere's centre lie in one plane, and so does the point between them.</remarks>
    public override IEnumerable<Position> Mirrors(Position light, Position eye)
    {
        if (light.SquareTo(_centre) == 0 || eye.SquareTo(_centre) == 0)
        {
            yield break;
        }

        var right = Direction.From(_centre, light);
        var up = Upright(right, Direction.From(_centre, eye));
        foreach (var angle in MirrorCircle.Angles(_radius, (_centre.DistanceTo(light), 0), (right.Dot(_centre, eye), up.Dot(_centre, eye))))
        {
            var (sin, cos) = Math.SinCos(angle);
            var at = _centre.Along(right, _radius * cos).Along(up, _radius * sin);
            if (Bounds(at))
            {
                yield return at;
            }
        }
    }

    public override Direction NormalAt(Position at) => Direction.From(_centre, at);

    protected override bool Bounds(Position at) => at.Z >= 0;

    protected override IEnumerable<double> Shares(Position from, Position to)
    {
        var (x, y, z) = (to.X - from.X, to.Y - from.Y, to.Z - from.Z);
        var (a, b, c) = (from.X - _centre.X, from.Y - _centre.Y, from.Z - _centre.Z);
        return Roots((x * x) + (y * y) + (z * z), (a * x) + (b * y) + (c * z), (a * a) + (b * b) + (c * c) - (_radius * _radius));
    }

    // At right angles to one direction, in the plane of both; any where they are one.
    private static Direction Upright(Direction right, Direction other)
    {
        const double OneLine = 1e-9;
        var along = right.Dot(other);
        var (x, y, z) = (other.X - (along * right.X), other.Y - (along * right.Y), other.Z - (along * right.Z));
        return (x * x) + (y * y) + (z * z) > OneLine * OneLine ? Direction.Of(x, y, z)
            : Math.Abs(right.Z) < 0.9 ? right.Cross(Direction.Up)
            : right.Cross(Direction.Right);
    }
}
