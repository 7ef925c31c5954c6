namespace StudioKit.Physics.Light.Covers;

/// <summary>A flat wall, a flat top or the surface of water.</summary>
internal sealed class FlatCoverSurface(CoverFace face, int axis, double offset, double right, double back, double top) : CoverSurface(face)
{
    // A wall ends where the next begins: the edge belongs to both.
    private const double Edge = 1e-9;

    public bool IsRound { get; init; }

    public override IEnumerable<Position> Mirrors(Position light, Position eye)
    {
        var (of, to) = (Along(light) - offset, Along(eye) - offset);
        if (of * to <= 0)
        {
            yield break;
        }

        // The picture of the light stands as far behind the wall as the light stands before it.
        var at = Position.Between(eye, Mirrored(light), to / (to + of));
        if (Bounds(at))
        {
            yield return at;
        }
    }

    public override Direction NormalAt(Position at) => axis switch { 0 => Direction.Right, 1 => Direction.Back, _ => Direction.Up };

    protected override bool Bounds(Position at) =>
        at.Z >= 0 && at.Z <= top + Edge && (IsRound ? double.Hypot(at.X, at.Y) <= right : Math.Abs(at.X) <= right + Edge && Math.Abs(at.Y) <= back + Edge);

    protected override IEnumerable<double> Shares(Position from, Position to) =>
        Along(to) - Along(from) is var way && way != 0 ? [(offset - Along(from)) / way] : [];

    private double Along(Position at) => axis switch { 0 => at.X, 1 => at.Y, _ => at.Z };

    private Position Mirrored(Position at) => axis switch
    {
        0 => at with { X = (2 * offset) - at.X },
        1 => at with { Y = (2 * offset) - at.Y },
        _ => at with { Z = (2 * offset) - at.Z },
    };
}
