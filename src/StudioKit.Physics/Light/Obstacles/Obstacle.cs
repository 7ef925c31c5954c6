namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A black body in the light's way: a frame member or the body of a flash.</summary>
/// <remarks>What little light it reflects is left out, so a shadow comes out slightly too deep.</remarks>
public abstract record Obstacle
{
    private readonly Position _least;
    private readonly Position _most;

    // Takes the box that holds the whole body, its sides along the studio's axes.
    private protected Obstacle(Position least, Position most) => (_least, _most) = (least, most);

    internal bool Blocks(Position from, Position to) => Near(from, to) && Cuts(from, to);

    internal static bool AnyBlocks(IReadOnlyList<Obstacle> obstacles, Position from, Position to)
    {
        for (var i = 0; i < obstacles.Count; i++)
        {
            if (obstacles[i].Blocks(from, to))
            {
                return true;
            }
        }

        return false;
    }

    private protected abstract bool Cuts(Position from, Position to);

    // Most rays pass a body's bounding box by, which is quicker to see than whether they meet the body.
    private bool Near(Position from, Position to) =>
        Overlaps(from.X, to.X, _least.X, _most.X) && Overlaps(from.Y, to.Y, _least.Y, _most.Y) && Overlaps(from.Z, to.Z, _least.Z, _most.Z);

    private static bool Overlaps(double from, double to, double least, double most) =>
        (from >= least || to >= least) && (from <= most || to <= most);
}
