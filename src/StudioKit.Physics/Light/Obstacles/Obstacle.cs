namespace StudioKit.Physics.Light.Obstacles;

/// <summary>A black body in the light's way: a frame member or the body of a flash.</summary>
/// <remarks>What little light it reflects is left out, so a shadow comes out slightly too deep.</remarks>
public abstract record Obstacle
{
    internal abstract bool Blocks(Position from, Position to);

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
}
