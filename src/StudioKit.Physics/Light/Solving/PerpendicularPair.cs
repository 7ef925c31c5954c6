namespace StudioKit.Physics.Light.Solving;

/// <summary>The exchange areas of the patches of two faces at right angles: sums over corners by how far apart these are along the common line, and how far from it.</summary>
internal sealed class PerpendicularPair
{
    private readonly EdgeSteps _shared;
    private readonly int _ups;
    private readonly int _sign;
    private readonly double[] _corners;

    public PerpendicularPair(PatchLattice lattice, BoxFace one, BoxFace other)
    {
        var edges = lattice.SharedEdges(one, other);
        _shared = new EdgeSteps(edges, edges);
        var (aways, ups) = (lattice.DistancesFrom(other), lattice.DistancesFrom(one));
        _ups = ups.Length;
        _sign = Math.Sign(aways[1] - aways[0]) * Math.Sign(ups[1] - ups[0]);
        _corners = [.. from away in aways from up in ups from step in _shared.Lengths select FormFactor.PerpendicularCorner(step, away, up)];
    }

    /// <summary>Exchange area of two patches [m²], each by its cell along the common line and away from it.</summary>
    public double Exchange((int Shared, int Away) one, (int Shared, int Away) other)
    {
        var (steps, length) = (_shared.Between(one.Shared, other.Shared), _shared.Lengths.Length);
        double Ends(int away, int up) => steps.Sum(_corners, ((away * _ups) + up) * length);
        return _sign * (Ends(one.Away, other.Away) - Ends(one.Away + 1, other.Away) - Ends(one.Away, other.Away + 1) + Ends(one.Away + 1, other.Away + 1));
    }
}
