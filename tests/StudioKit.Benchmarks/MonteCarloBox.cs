using StudioKit.Physics.Light;

namespace StudioKit.Benchmarks;

/// <summary>The plain way to the same answer: paths from each panel point, cosine-weighted, with a sample of the window at every bounce.</summary>
internal sealed class MonteCarloBox(LightScene scene, int seed)
{
    private const int MostBounces = 60;

    private readonly Random _random = new(seed);
    private readonly (double X, double Y, double Z) _half = (
        scene.Panel.Width.Meters / 2, scene.Panel.Depth.Meters / 2, scene.Panel.Height.Meters / 2);

    /// <summary>Luminous exposure at a point of the panel [lx·s], the mean of so many paths.</summary>
    public double Exposure(Position point, int paths)
    {
        var sum = 0.0;
        for (var i = 0; i < paths; i++)
        {
            sum += Path(point);
        }

        return sum / paths;
    }

    private double Path(Position place)
    {
        var (normal, weight, sum) = (-Direction.Up, 1.0, 0.0);
        for (var bounce = 0; bounce < MostBounces; bounce++)
        {
            sum += weight * Window(place, normal);
            var ray = CosineRay(normal);
            (place, normal, var reflectance) = Hit(place, ray);
            weight *= reflectance;

            // Roulette: a path that carries little ends early, the others carry its share.
            if (weight < 0.1)
            {
                if (_random.NextDouble() > 0.5)
                {
                    break;
                }

                weight *= 2;
            }
        }

        return sum;
    }

    private double Window(Position place, Direction normal)
    {
        var emitter = scene.Emitters[0];
        var from = emitter.Centre
            .Along(emitter.Orientation.Across, (_random.NextDouble() - 0.5) * emitter.Width.Meters)
            .Along(emitter.Orientation.Along, (_random.NextDouble() - 0.5) * emitter.Height.Meters);
        var ray = Direction.From(from, place);
        var facing = -((ray.X * normal.X) + (ray.Y * normal.Y) + (ray.Z * normal.Z));
        var distance = from.DistanceTo(place);
        return facing <= 0 || ray.Z <= 0 ? 0 : emitter.AxialIntensityTime * ray.Z * facing / (distance * distance);
    }

    private Direction CosineRay(Direction normal)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * _random.NextDouble());
        var square = _random.NextDouble();
        var (u, v, w) = (Math.Sqrt(square) * cos, Math.Sqrt(square) * sin, Math.Sqrt(1 - square));
        return normal switch
        {
            { Z: > 0.5 or < -0.5 } => Direction.Of(u, v, w * normal.Z),
            { X: > 0.5 or < -0.5 } => Direction.Of(w * normal.X, u, v),
            _ => Direction.Of(u, w * normal.Y, v),
        };
    }

    private (Position Place, Direction Normal, double Reflectance) Hit(Position from, Direction ray)
    {
        var toX = Distance(from.X, ray.X, _half.X);
        var toY = Distance(from.Y, ray.Y, _half.Y);
        var toZ = Distance(from.Z - _half.Z, ray.Z, _half.Z);
        var skirt = scene.Surround.SkirtReflectance!.Value;
        return (toX < toY, toX < toZ, toY < toZ) switch
        {
            (true, true, _) => (from.Along(ray, toX), Direction.Of(-Math.Sign(ray.X), 0, 0), skirt),
            (false, _, true) => (from.Along(ray, toY), Direction.Of(0, -Math.Sign(ray.Y), 0), skirt),
            _ => (from.Along(ray, toZ), Direction.Of(0, 0, -Math.Sign(ray.Z)), ray.Z > 0 ? scene.Panel.UndersideReflectance : scene.Surround.FloorReflectance),
        };
    }

    private static double Distance(double place, double step, double half) =>
        step == 0 ? double.PositiveInfinity : Math.Max(1e-12, ((Math.Sign(step) * half) - place) / step);
}
