using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Standing;

/// <summary>Light that falls from a flash on a small piece of surface, wherever it lies and faces: the sheet beneath the subject, or the subject itself.</summary>
/// <remarks>The window is taken as a lattice of Gauss points that all throw its beam; for a window not much nearer than its own size they leave less than a thousandth.</remarks>
public static class LightOnSurface
{
    private const int PointsPerSide = 12;
    private static readonly (double Place, double Weight)[] Rule = GaussLegendre.About(PointsPerSide, 0.5);

    /// <summary>Luminous exposure at a point.</summary>
    /// <param name="light">The flash.</param>
    /// <param name="point">The point, not on the window itself.</param>
    /// <param name="normal">Way that the surface faces there.</param>
    /// <returns>∫ I·cos θ/r² over the window [lx·s]; ≥ 0, what comes from behind the surface left out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is not finite.</exception>
    [Source("Walsh1958", "inverse-square and cosine law, summed over the window")]
    public static double Exposure(Emitter light, Position point, Direction normal)
    {
        ArgumentNullException.ThrowIfNull(light);
        var sum = 0.0;
        foreach (var (window, weight) in Points(light))
        {
            sum += weight * FromPoint(light, window, point, normal);
        }

        return light.AxialIntensityTime * sum;
    }

    /// <summary>Luminance times time of a matt surface by that light.</summary>
    /// <param name="exposure">Luminous exposure E [lx·s]; ≥ 0.</param>
    /// <param name="reflectance">Diffuse reflectance ρ [1]; 0 to 1.</param>
    /// <returns>ρ·E/π [cd·s/m²].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("CommonPractice", "CIE vocabulary: Lambertian surface, M = π·L")]
    public static double Luminance(double exposure, double reflectance) => Guard.Between(reflectance, 0, 1) * Guard.NonNegative(exposure) / Math.PI;

    /// <summary>Points of the window with their shares of its light, which sum to 1.</summary>
    internal static IEnumerable<(Position Place, double Weight)> Points(Emitter light) =>
        from across in Rule
        from along in Rule
        select (light.Centre.Along(light.Orientation.Across, across.Place * light.Width.Meters).Along(light.Orientation.Along, along.Place * light.Height.Meters), across.Weight * along.Weight);

    private static double FromPoint(Emitter light, Position window, Position point, Direction normal)
    {
        var square = Guard.Positive(window.SquareTo(point), nameof(point));
        var way = Direction.From(window, point);
        var cosine = -way.Dot(normal);
        return cosine <= 0
            ? 0
            : light.Lobe.RelativeIntensity(way.Dot(light.Orientation.Across), way.Dot(light.Orientation.Along), way.Dot(light.Orientation.Axis)) * cosine / square;
    }
}
