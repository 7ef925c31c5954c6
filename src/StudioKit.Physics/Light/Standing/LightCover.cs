using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Standing;

/// <summary>How much of a light a body between it and the subject covers: the lens with its hood, above all.</summary>
public static class LightCover
{
    // Far over what rounding adds to a distance [m], so that no body that grazes a ray is passed over.
    private const double Rounding = 1e-6;

    /// <summary>Share of a light's window that bodies hide from a point.</summary>
    /// <param name="light">The light.</param>
    /// <param name="point">A point of the subject.</param>
    /// <param name="bodies">What may stand between.</param>
    /// <returns>Share of the light that is missing there [1]; 0 to 1.</returns>
    /// <exception cref="ArgumentNullException">There is no light, or are no bodies.</exception>
    [Source("Derived", "straight rays from a lattice of points of the window")]
    public static double Share(Emitter light, Position point, IReadOnlyList<Obstacle> bodies)
    {
        ArgumentNullException.ThrowIfNull(light);
        ArgumentNullException.ThrowIfNull(bodies);
        var reach = Rounding + (Math.Sqrt((light.Width.Meters * light.Width.Meters) + (light.Height.Meters * light.Height.Meters)) / 2);
        List<Obstacle> near = [.. bodies.Where(body => body.MayComeWithin(reach, point, light.Centre))];
        if (near.Count == 0)
        {
            return 0;
        }

        var covered = 0.0;
        foreach (var (window, weight) in LightOnSurface.Points(light))
        {
            covered += near.Exists(body => body.Blocks(point, window)) ? weight : 0;
        }

        return Math.Clamp(covered, 0, 1);
    }
}
