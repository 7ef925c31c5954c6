using System.Numerics;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Light that goes straight from one flash's window to the surfaces, its axial intensity·time being 1 cd·s.</summary>
/// <remarks>H/I₀ = Σ wₛ·f(u, v, w)·cos θ/d², the window cut into Gauss points s of weight wₛ; inverse square and cosine law a point.</remarks>
[Source("Walsh1958", "inverse square and cosine laws of illumination")]
internal sealed class DirectLight
{
    // Far over what rounding adds to a distance [m], so that no ray that grazes a body is passed over.
    private const double Rounding = 1e-6;

    // Stands for the square of no distance [m²], so that a point of the ground under a window that lies on it gets nothing, and not nothing by nothing.
    private const double Nowhere = 1e-200;

    // Where something may hide a part of the window it is cut into so many points and their mirror images, on a lattice of neighbouring Fibonacci numbers: each stands in a column and a row of its own,
    // so that an edge of shade along the window passes them one by one.
    private const int FinePoints = 233;
    private const int FineStep = 144;

    private readonly Emitter _emitter;
    private readonly Position[] _places;
    private readonly double[] _weights;
    private readonly Lazy<Position[]> _fine;
    private readonly Obstacle[] _obstacles;
    private readonly (Position Least, Position Most) _box;
    private readonly double _reach;

    /// <summary>Cuts a window into enough points for surfaces no nearer than a distance [m].</summary>
    public DirectLight(Emitter emitter, IReadOnlyList<Obstacle> obstacles, double nearest)
    {
        (_emitter, _obstacles) = (emitter, [.. obstacles]);
        var across = Rule(emitter.Width.Meters, nearest);
        var along = Rule(emitter.Height.Meters, nearest);
        var points = from row in along
                     from column in across
                     select (Place: InWindow(column.Place, row.Place), Weight: column.Weight * row.Weight / (emitter.Width.Meters * emitter.Height.Meters));
        _places = [.. points.Select(point => point.Place)];
        _weights = [.. points.Select(point => point.Weight)];
        _fine = new(() => [.. Enumerable.Range(0, FinePoints).SelectMany(Fine)]);
        Position[] corners = [.. from row in Ends(emitter.Height.Meters) from column in Ends(emitter.Width.Meters) select InWindow(column, row)];
        _box = BoxOf(corners);
        _reach = Rounding + emitter.Centre.DistanceTo(corners[0]);
    }

    // Whatever the window's size, all of it from its middle, and nothing in the way.
    private DirectLight(Emitter emitter)
    {
        (_emitter, _obstacles, _places, _weights, _fine) = (emitter, [], [emitter.Centre], [1], new(() => []));
        _box = (emitter.Centre, emitter.Centre);
    }

    /// <summary>All of a flash's light from the middle of its window, with nothing in its way: a quick first guess.</summary>
    public static DirectLight FromMiddle(Emitter emitter) => new(emitter);

    /// <summary>Where the flash's window lies and the way it faces.</summary>
    public (Position Place, Direction Axis) Window => (_emitter.Centre, _emitter.Orientation.Axis);

    /// <summary>Adds this flash's luminous exposure at every receiver [lx·s a cd·s].</summary>
    public void AddTo(ReceiverSet receivers, Span<double> exposure) => AddTo(receivers, receivers.PaddedCount, isSoft: true, exposure);

    /// <summary>Adds it at the first receivers, up to the next whole vector.</summary>
    public void AddTo(ReceiverSet receivers, int end, Span<double> exposure) => AddTo(receivers, end, isSoft: true, exposure);

    /// <summary>The same, in half shade only as well as the window's few points tell: for receivers whose mean is taken.</summary>
    public void AddRoughlyTo(ReceiverSet receivers, Span<double> exposure) => AddTo(receivers, receivers.PaddedCount, isSoft: false, exposure);

    private void AddTo(ReceiverSet receivers, int end, bool isSoft, Span<double> exposure)
    {
        var (nearBlock, inTheWay) = (new Obstacle[_obstacles.Length], new Obstacle[_obstacles.Length]);
        foreach (var block in receivers.Blocks)
        {
            if (block.Start >= end)
            {
                return;
            }

            if (LightsNothingOf(block))
            {
                continue;
            }

            var near = nearBlock.AsSpan(0, Near(block, nearBlock));
            for (var start = block.Start; start < Math.Min(block.End, end); start += VectorMath.Lanes)
            {
                (new Vector<double>(exposure[start..]) + Arriving(receivers, start, near, inTheWay, isSoft)).CopyTo(exposure[start..]);
            }
        }
    }

    private bool LightsNothingOf(in ReceiverBlock block) =>
        !_emitter.Lobe.LightsBehind && block.Ahead(_emitter.Centre, _emitter.Orientation.Axis) < -Rounding;

    // A way from the window to the block lies no further from the way between their middles than their ends do.
    private int Near(in ReceiverBlock block, Obstacle[] into)
    {
        var (count, middle, reach) = (0, block.Middle, Math.Max(_reach, Rounding + block.Reach));
        foreach (var obstacle in _obstacles)
        {
            if (obstacle.MayStandBetween(block.Least, block.Most, _box.Least, _box.Most) && obstacle.MayComeWithin(reach, _emitter.Centre, middle))
            {
                into[count++] = obstacle;
            }
        }

        return count;
    }

    // What stands in the way is looked for where light comes at all, which it does not behind a window.
    private Vector<double> Arriving(ReceiverSet receivers, int start, ReadOnlySpan<Obstacle> near, Obstacle[] inTheWay, bool isSoft)
    {
        var (sum, count) = (Vector<double>.Zero, -1);
        for (var s = 0; s < _places.Length; s++)
        {
            var arriving = _weights[s] * Arriving(receivers, start, _places[s]);
            if (Vector.EqualsAll(arriving, Vector<double>.Zero))
            {
                continue;
            }

            count = count < 0 ? InTheWay(receivers, start, near, inTheWay) : count;
            sum += count == 0 || isSoft ? arriving : arriving * Visible(receivers, start, _places[s], inTheWay.AsSpan(0, count));
        }

        return isSoft && count > 0 ? sum * OpenShare(receivers, start, inTheWay.AsSpan(0, count)) : sum;
    }

    // Of the light that would arrive, what comes from where nothing stands in its way [1].
    private Vector<double> OpenShare(ReceiverSet receivers, int start, ReadOnlySpan<Obstacle> inTheWay)
    {
        var (all, open) = (Vector<double>.Zero, Vector<double>.Zero);
        foreach (var place in _fine.Value)
        {
            var arriving = Arriving(receivers, start, place);
            all += arriving;
            open += arriving * Visible(receivers, start, place, inTheWay);
        }

        return Vector.ConditionalSelect(Vector.GreaterThan(all, Vector<double>.Zero), open / all, Vector<double>.One);
    }

    // Most bodies stand nowhere near the way to a receiver, which is seen once for the whole window.
    private int InTheWay(ReceiverSet receivers, int start, ReadOnlySpan<Obstacle> near, Obstacle[] into)
    {
        var count = 0;
        foreach (var obstacle in near)
        {
            for (var lane = 0; lane < VectorMath.Lanes; lane++)
            {
                var place = receivers.Place(start + lane);
                if (obstacle.MayStandBetween(place, place, _box.Least, _box.Most) && obstacle.MayComeWithin(_reach, _emitter.Centre, place))
                {
                    into[count++] = obstacle;
                    break;
                }
            }
        }

        return count;
    }

    private static (Position Least, Position Most) BoxOf(Position[] places) => (
        new Position(places.Min(place => place.X), places.Min(place => place.Y), places.Min(place => place.Z)),
        new Position(places.Max(place => place.X), places.Max(place => place.Y), places.Max(place => place.Z)));

    private Vector<double> Arriving(ReceiverSet receivers, int start, Position place)
    {
        var frame = _emitter.Orientation;
        var dx = ReceiverSet.Load(receivers.X, start) - new Vector<double>(place.X);
        var dy = ReceiverSet.Load(receivers.Y, start) - new Vector<double>(place.Y);
        var dz = ReceiverSet.Load(receivers.Z, start) - new Vector<double>(place.Z);
        var square = Vector.Max((dx * dx) + (dy * dy) + (dz * dz), new Vector<double>(Nowhere));
        var inverse = Vector<double>.One / Vector.SquareRoot(square);
        var facing = Vector.Max(
            Vector<double>.Zero,
            -((ReceiverSet.Load(receivers.NormalX, start) * dx)
            + (ReceiverSet.Load(receivers.NormalY, start) * dy)
            + (ReceiverSet.Load(receivers.NormalZ, start) * dz)) * inverse);
        var intensity = _emitter.Lobe.Relative(
            Cosine(frame.Across, dx, dy, dz) * inverse, Cosine(frame.Along, dx, dy, dz) * inverse, Cosine(frame.Axis, dx, dy, dz) * inverse);
        return intensity * facing / square;
    }

    private static Vector<double> Cosine(Direction direction, Vector<double> dx, Vector<double> dy, Vector<double> dz) =>
        (direction.X * dx) + (direction.Y * dy) + (direction.Z * dz);

    private static Vector<double> Visible(ReceiverSet receivers, int start, Position from, ReadOnlySpan<Obstacle> inTheWay)
    {
        var to = receivers.Places(start);
        var hidden = Vector<long>.Zero;
        foreach (var obstacle in inTheWay)
        {
            hidden |= obstacle.Blocks(from, to);
        }

        return Vector.ConditionalSelect(hidden, Vector<double>.Zero, Vector<double>.One);
    }

    private Position InWindow(double across, double along) => _emitter.Centre.Along(_emitter.Orientation.Across, across).Along(_emitter.Orientation.Along, along);

    private static IEnumerable<double> Ends(double size) => [-size / 2, size / 2];

    private IEnumerable<Position> Fine(int point)
    {
        var across = (((point + 0.5) / FinePoints) - 0.5) * _emitter.Width.Meters;
        var along = (((((FineStep * point) % FinePoints) + 0.5) / FinePoints) - 0.5) * _emitter.Height.Meters;
        return [InWindow(across, along), InWindow(-across, along)];
    }

    // Three points a side at one window size away, more when nearer.
    private static (double Place, double Weight)[] Rule(double size, double nearest) =>
        GaussLegendre.About((int)Math.Clamp(Math.Ceiling(2 + (3 * size / Math.Max(nearest, 1e-3))), 3, 8), size / 2);
}
