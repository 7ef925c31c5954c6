using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Standing;

/// <summary>How much of a light a body between it and the subject covers: the lens with its hood, above all.</summary>
public static class LightCover
{
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
        var covered = 0.0;
        foreach (var (window, weight) in LightOnSurface.Points(light))
        {
            covered += bodies.Any(body => body.Blocks(point, window)) ? weight : 0;
        }

        return Math.Clamp(covered, 0, 1);
    }
}
