namespace StudioKit.Physics.Light.Covers;

/// <summary>An upright round wall.</summary>
internal sealed class RoundCoverSurface(double radius, double top) : CoverSurface(CoverFace.Round)
{
    /// <remarks>Seen from above the wall is a circle that turns light back as any mirror does, and the rise goes on as it was.</remarks>
    public override IEnumerable<Position> Mirrors(Position light, Position eye)
    {
        foreach (var angle in MirrorCircle.Angles(radius, (light.X, light.Y), (eye.X, eye.Y)))
        {
            var (sin, cos) = Math.SinCos(angle);
            var (x, y) = (radius * cos, radius * sin);
            var (before, after) = (double.Hypot(light.X - x, light.Y - y), double.Hypot(eye.X - x, eye.Y - y));
            var at = new Position(x, y, light.Z + ((eye.Z - light.Z) * before / (before + after)));
            if (Bounds(at))
            {
                yield return at;
            }
        }
    }

    public override Direction NormalAt(Position at) => Direction.Of(at.X, at.Y, 0);

    protected override bool Bounds(Position at) => at.Z >= 0 && at.Z <= top;

    protected override IEnumerable<double> Shares(Position from, Position to)
    {
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        return Roots((x * x) + (y * y), (from.X * x) + (from.Y * y), (from.X * from.X) + (from.Y * from.Y) - (radius * radius));
    }
}
