namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A black body in the light's way: a frame member or the body of a flash.</summary>
/// <remarks>What little light it reflects is left out, so a shadow comes out slightly too deep.</remarks>
public abstract record Obstacle
{
    private readonly Position _least;
    private readonly Position _most;

    // Takes the box that holds the whole body, its sides along the studio's axes.
    private protected Obstacle(Position least, Position most) => (_least, _most) = (least, most);

    /// <summary>The box along its own axes that holds it.</summary>
    internal abstract ObstacleHull Hull { get; }

    internal bool Blocks(Position from, Position to) => Near(from, to) && Cuts(from, to);

    internal static bool AnyBlocks(ReadOnlySpan<Obstacle> obstacles, Position from, Position to)
    {
        foreach (var obstacle in obstacles)
        {
            if (obstacle.Blocks(from, to))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether it may stand between a place and any point of a box; one that does not blocks no ray from there to the box.</summary>
    internal bool MayStandBetween(Position place, Position least, Position most) =>
        Math.Max(place.X, most.X) >= _least.X && Math.Min(place.X, least.X) <= _most.X
        && Math.Max(place.Y, most.Y) >= _least.Y && Math.Min(place.Y, least.Y) <= _most.Y
        && Math.Max(place.Z, most.Z) >= _least.Z && Math.Min(place.Z, least.Z) <= _most.Z;

    /// <summary>Whether it may come nearer to a straight way than a distance [m]; one that does not blocks no ray whose ends lie so near to that way's ends.</summary>
    internal virtual bool MayComeWithin(double distance, Position from, Position to) => true;

    /// <summary>The same body with its places moved apart or together about the middle of the studio's ground, as a frame is that grows with its sheet.</summary>
    /// <param name="across">Factor across the view [1]; &gt; 0.</param>
    /// <param name="along">Factor along the view [1]; &gt; 0.</param>
    internal abstract Obstacle Spread(double across, double along);

    private protected abstract bool Cuts(Position from, Position to);

    // Most rays pass a body's bounding box by, which is quicker to see than whether they meet the body.
    private bool Near(Position from, Position to) =>
        Overlaps(from.X, to.X, _least.X, _most.X) && Overlaps(from.Y, to.Y, _least.Y, _most.Y) && Overlaps(from.Z, to.Z, _least.Z, _most.Z);

    private static bool Overlaps(double from, double to, double least, double most) =>
        (from >= least || to >= least) && (from <= most || to <= most);
}
