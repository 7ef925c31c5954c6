using System.Numerics;

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

    /// <summary>The same for rays from one place to several: a lane of ones for each that is blocked.</summary>
    internal Vector<long> Blocks(Position from, in PositionVector to)
    {
        var near = Near(from, to);
        return Vector.EqualsAll(near, Vector<long>.Zero) ? near : near & Cuts(from, to);
    }

    /// <summary>Whether it may stand between any points of two boxes; one that does not blocks no ray from the one to the other.</summary>
    internal bool MayStandBetween(Position least, Position most, Position otherLeast, Position otherMost) =>
        Math.Max(most.X, otherMost.X) >= _least.X && Math.Min(least.X, otherLeast.X) <= _most.X
        && Math.Max(most.Y, otherMost.Y) >= _least.Y && Math.Min(least.Y, otherLeast.Y) <= _most.Y
        && Math.Max(most.Z, otherMost.Z) >= _least.Z && Math.Min(least.Z, otherLeast.Z) <= _most.Z;

    /// <summary>Whether it may come nearer to a straight way than a distance [m]; one that does not blocks no ray whose ends lie so near to that way's ends.</summary>
    internal virtual bool MayComeWithin(double distance, Position from, Position to) => true;

    /// <summary>The same body with its places moved apart or together about the middle of the studio's ground, as a frame is that grows with its sheet.</summary>
    /// <param name="across">Factor across the view [1]; &gt; 0.</param>
    /// <param name="along">Factor along the view [1]; &gt; 0.</param>
    internal abstract Obstacle Spread(double across, double along);

    private protected abstract bool Cuts(Position from, Position to);

    private protected virtual Vector<long> Cuts(Position from, in PositionVector to)
    {
        var cut = Vector<long>.Zero;
        for (var lane = 0; lane < VectorMath.Lanes; lane++)
        {
            cut = Cuts(from, to[lane]) ? cut.WithElement(lane, -1) : cut;
        }

        return cut;
    }

    // Most rays pass a body's bounding box by, which is quicker to see than whether they meet the body.
    private bool Near(Position from, Position to) =>
        Overlaps(from.X, to.X, _least.X, _most.X) && Overlaps(from.Y, to.Y, _least.Y, _most.Y) && Overlaps(from.Z, to.Z, _least.Z, _most.Z);

    private static bool Overlaps(double from, double to, double least, double most) =>
        (from >= least || to >= least) && (from <= most || to <= most);

    private Vector<long> Near(Position from, in PositionVector to) =>
        Overlaps(from.X, to.X, _least.X, _most.X) & Overlaps(from.Y, to.Y, _least.Y, _most.Y) & Overlaps(from.Z, to.Z, _least.Z, _most.Z);

    private static Vector<long> Overlaps(double from, Vector<double> to, double least, double most)
    {
        var all = Vector<long>.AllBitsSet;
        var above = from >= least ? all : Vector.GreaterThanOrEqual(to, new Vector<double>(least));
        return above & (from <= most ? all : Vector.LessThanOrEqual(to, new Vector<double>(most)));
    }
}
