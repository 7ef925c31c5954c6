namespace StudioKit.Physics.Light.Covers;

/// <summary>One smooth part of a cover, taken as a sheet without thickness.</summary>
internal abstract class CoverSurface(CoverFace face)
{
    private const double OnTheWay = 1e-9;

    public CoverFace Face { get; } = face;

    /// <summary>The parts of a cover.</summary>
    public static IReadOnlyList<CoverSurface> Of(CoverCase cover)
    {
        var wall = Guard.NonNegative(cover.Wall.Meters, nameof(cover.Wall));
        var (right, back) = ((Guard.Positive(cover.Width.Meters, nameof(cover.Width)) / 2) + wall, (Guard.Positive(cover.Depth.Meters, nameof(cover.Depth)) / 2) + wall);
        var high = Guard.Positive(cover.Height.Meters, nameof(cover.Height));
        var top = high + wall;
        return cover.Shape switch
        {
            CoverShape.Tub => [.. Walls(right, back, top), new FlatCoverSurface(CoverFace.Top, 2, top, right, back, top)],
            CoverShape.RoundTub => [new RoundCoverSurface(right, top), new FlatCoverSurface(CoverFace.Top, 2, top, right, back, top) { IsRound = true }],
            CoverShape.Dome => [new DomeCoverSurface(right, top)],
            CoverShape.Tank => [.. Walls(right, back, high), .. Water(cover, right - wall, back - wall)],
            _ => throw new ArgumentOutOfRangeException(nameof(cover), cover.Shape, "Not a shape of a cover."),
        };
    }

    /// <summary>Where the line between two points goes through it.</summary>
    public IEnumerable<CoverCrossing> Crossings(Position from, Position to)
    {
        foreach (var share in Shares(from, to))
        {
            var at = Position.Between(from, to, share);
            if (share is > OnTheWay and < 1 - OnTheWay && Bounds(at))
            {
                yield return new CoverCrossing(Face, at, Math.Acos(Math.Min(1, Math.Abs(NormalAt(at).Dot(Direction.From(from, to))))));
            }
        }
    }

    /// <summary>Places that throw light of one point to another.</summary>
    public abstract IEnumerable<Position> Mirrors(Position light, Position eye);

    public abstract Direction NormalAt(Position at);

    protected abstract bool Bounds(Position at);

    /// <summary>Shares of the way from one point to the other at which the unbounded surface is met.</summary>
    protected abstract IEnumerable<double> Shares(Position from, Position to);

    /// <summary>Roots of a·s² + 2·b·s + c.</summary>
    protected static IEnumerable<double> Roots(double a, double b, double c)
    {
        var square = (b * b) - (a * c);
        if (a <= 0 || square <= 0)
        {
            return [];
        }

        var root = Math.Sqrt(square);
        return [(-b - root) / a, (-b + root) / a];
    }

    private static IEnumerable<CoverSurface> Walls(double right, double back, double top) =>
    [
        new FlatCoverSurface(CoverFace.Front, 1, -back, right, back, top), new FlatCoverSurface(CoverFace.Back, 1, back, right, back, top),
        new FlatCoverSurface(CoverFace.Left, 0, -right, right, back, top), new FlatCoverSurface(CoverFace.Right, 0, right, right, back, top),
    ];

    private static IEnumerable<CoverSurface> Water(CoverCase cover, double right, double back) =>
        cover.HoldsWater ? [new FlatCoverSurface(CoverFace.Water, 2, Math.Min(cover.Water.Meters, cover.Height.Meters), right, back, cover.Height.Meters)] : [];
}
