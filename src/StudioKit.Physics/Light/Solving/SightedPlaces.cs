using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Places as an obstacle sees them. Of most rays it tells at a glance that they pass it by; of the others it asks the obstacle.</summary>
/// <remarks>
/// A ray passes a box by when both its ends lie beyond one face, and when, seen along the axis, all four edges lie on one side of it.
/// The box is taken a micrometre larger, so that rounding hides no ray that grazes the body.
/// </remarks>
internal sealed class SightedPlaces
{
    private const double Margin = 1e-6;

    // Two products of coordinates in metres, far above their rounding and far under a micrometre times the shortest ray that matters.
    private const double Rounding = 1e-12;

    private readonly Obstacle _obstacle;
    private readonly Position[] _places;
    private readonly double[] _across;
    private readonly double[] _along;
    private readonly (double Across, double Along) _half;

    public SightedPlaces(Obstacle obstacle, Position[] places)
    {
        (_obstacle, _places) = (obstacle, places);
        (_across, _along, Sides) = (new double[places.Length], new double[places.Length], new byte[places.Length]);
        var hull = obstacle.Hull;
        _half = (hull.Half.Across + Margin, hull.Half.Along + Margin);
        var (centre, halfAxis) = (hull.Centre, hull.Half.Axis + Margin);
        var (across, along, axis) = (hull.Across, hull.Along, hull.Axis);
        for (var i = 0; i < places.Length; i++)
        {
            _across[i] = across.Dot(centre, places[i]);
            _along[i] = along.Dot(centre, places[i]);
            Sides[i] = (byte)(Side(_across[i], _half.Across) | (Side(_along[i], _half.Along) << 2) | (Side(axis.Dot(centre, places[i]), halfAxis) << 4));
        }
    }

    /// <summary>The faces of the box that each place lies beyond, a bit for each; no ray between two places beyond one face meets the obstacle.</summary>
    public byte[] Sides { get; }

    /// <summary>Whether the obstacle stands between two places.</summary>
    public bool IsBetween(int from, int to)
    {
        var (u, v) = (_across[from], _along[from]);
        var (du, dv) = (_across[to] - u, _along[to] - v);
        return Math.Abs((u * dv) - (v * du)) <= (_half.Across * Math.Abs(dv)) + (_half.Along * Math.Abs(du)) + Rounding
            && _obstacle.Blocks(_places[from], _places[to]);
    }

    private static int Side(double place, double half) => place > half ? 1 : place < -half ? 2 : 0;
}
