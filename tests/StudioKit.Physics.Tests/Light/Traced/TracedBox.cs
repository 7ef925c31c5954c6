using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Tests.Light.Traced;

/// <summary>Luminous exposure in a closed box by following light back from a point, path by path: no patches, no form factors, nothing of the solver's reckoning.</summary>
/// <remarks>
/// From the point a path goes on by cosine-weighted bounces. At each stop one place of the flash's window is looked at, by the inverse square and cosine laws;
/// a path ends at a black body, or by lot once it carries little, and those that go on then carry the others' share, so that nothing is cut off. Its first turns are shifted Halton points and the further ones random, of a fixed seed;
/// each batch of paths has a shift of its own, so that the batches tell the standard error of their mean.
/// </remarks>
internal sealed class TracedBox
{
    // Every second path that carries less than this share ends.
    private const double Little = 0.02;
    private const int Batches = 16;

    private readonly LightPanel _panel;
    private readonly LightSurround _surround;
    private readonly Emitter _flash;
    private readonly Func<Position, Position, bool>[] _bodies;
    private readonly (double X, double Y, double Z) _size;

    public TracedBox(LightPanel panel, LightSurround surround, Emitter flash)
    {
        (_panel, _surround, _flash) = (panel, surround, flash);
        _size = (panel.Width.Meters, panel.Depth.Meters, panel.Height.Meters);
        Obstacle[] bodies = [.. surround.Frame, .. flash.Body is { } body ? [body] : Array.Empty<Obstacle>()];
        _bodies = [.. bodies.Select(TracedBody.Of)];
    }

    /// <summary>Luminous exposure at a point of the underside.</summary>
    /// <param name="point">Where.</param>
    /// <param name="paths">How many paths are followed [1].</param>
    public TracedLight At(Position point, int paths)
    {
        double[] means = [.. Enumerable.Range(0, Batches).AsParallel().AsOrdered().Select(batch => Mean(point, batch, paths / Batches))];
        var mean = means.Average();
        return new TracedLight(mean, Math.Sqrt(means.Sum(value => (value - mean) * (value - mean)) / (Batches * (Batches - 1))));
    }

    private double Mean(Position point, int batch, int paths)
    {
        var (turns, sum) = (new ShiftedTurns(batch), 0.0);
        for (var path = 0; path < paths; path++)
        {
            turns.Start(path);
            sum += Follow(point, turns);
        }

        return sum / paths;
    }

    private double Follow(Position place, ShiftedTurns turns)
    {
        var (wall, weight, sum) = (Wall.Top, 1.0, 0.0);
        while (weight > 0)
        {
            sum += weight * FromWindow(place, wall, turns.Next(), turns.Next());
            var from = place;
            (place, wall) = Meet(place, Bounce(wall, turns.Next(), turns.Next()));
            weight = IsHidden(from, place) ? 0 : weight * Reflectance(wall);
            weight = weight > Little ? weight : turns.Next() < 0.5 ? 0 : 2 * weight;
        }

        return sum;
    }

    private double FromWindow(Position place, Wall wall, double u, double v)
    {
        var frame = _flash.Orientation;
        var window = _flash.Centre.Along(frame.Across, (u - 0.5) * _flash.Width.Meters).Along(frame.Along, (v - 0.5) * _flash.Height.Meters);
        var (x, y, z) = (place.X - window.X, place.Y - window.Y, place.Z - window.Z);
        var distance = Math.Sqrt((x * x) + (y * y) + (z * z));
        double Cosine(Direction direction) => ((direction.X * x) + (direction.Y * y) + (direction.Z * z)) / distance;
        var (leaving, arriving) = (Cosine(frame.Axis), Inward(wall, -x, -y, -z) / distance);
        if (leaving <= 0 || arriving <= 0 || IsHidden(window, place))
        {
            return 0;
        }

        return _flash.AxialIntensityTime * Beam(Cosine(frame.Across), Cosine(frame.Along), leaving) * arriving / (distance * distance);
    }

    private double Beam(double across, double along, double leaving)
    {
        var shape = ((CosineLobe)_flash.Lobe).Shape;
        var aside = (across * across) + (along * along);
        var share = aside > 0 ? across * across / aside : 0.5;
        return Math.Pow(leaving, (shape.ExponentAcross * share) + (shape.ExponentUp * (1 - share)));
    }

    private bool IsHidden(Position from, Position to)
    {
        foreach (var stops in _bodies)
        {
            if (stops(from, to))
            {
                return true;
            }
        }

        return false;
    }

    // A point of the unit disc lifted to the half ball over it is cosine-weighted.
    private static (double X, double Y, double Z) Bounce(Wall wall, double u, double v)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * u);
        var (aside, other, inward) = (Math.Sqrt(v) * cos, Math.Sqrt(v) * sin, Math.Sqrt(1 - v));
        return wall switch
        {
            Wall.Bottom => (aside, other, inward),
            Wall.Top => (aside, other, -inward),
            Wall.Left => (inward, aside, other),
            Wall.Right => (-inward, aside, other),
            Wall.Front => (aside, inward, other),
            _ => (aside, -inward, other),
        };
    }

    private static double Inward(Wall wall, double x, double y, double z) => wall switch
    {
        Wall.Bottom => z,
        Wall.Top => -z,
        Wall.Left => x,
        Wall.Right => -x,
        Wall.Front => y,
        _ => -y,
    };

    private (Position Place, Wall Wall) Meet(Position from, (double X, double Y, double Z) step)
    {
        var aside = Reach(from.X + (_size.X / 2), step.X, _size.X);
        var ahead = Reach(from.Y + (_size.Y / 2), step.Y, _size.Y);
        var up = Reach(from.Z, step.Z, _size.Z);
        var least = Math.Min(aside, Math.Min(ahead, up));
        var place = new Position(from.X + (least * step.X), from.Y + (least * step.Y), from.Z + (least * step.Z));
        return least == up ? (place with { Z = step.Z > 0 ? _size.Z : 0 }, step.Z > 0 ? Wall.Top : Wall.Bottom)
            : least == aside ? (place with { X = Math.Sign(step.X) * _size.X / 2 }, step.X > 0 ? Wall.Right : Wall.Left)
            : (place with { Y = Math.Sign(step.Y) * _size.Y / 2 }, step.Y > 0 ? Wall.Back : Wall.Front);
    }

    // Steps to the wall ahead, from a place counted from the lower one.
    private static double Reach(double place, double step, double size) => step switch
    {
        > 0 => (size - place) / step,
        < 0 => -place / step,
        _ => double.PositiveInfinity,
    };

    private double Reflectance(Wall wall) => wall switch
    {
        Wall.Top => _panel.UndersideReflectance,
        Wall.Bottom => _surround.FloorReflectance,
        _ => _surround.SkirtReflectance!.Value,
    };

    private enum Wall
    {
        Bottom,
        Top,
        Left,
        Right,
        Front,
        Back,
    }
}
