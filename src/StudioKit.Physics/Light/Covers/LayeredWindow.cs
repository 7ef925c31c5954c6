using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Covers;

/// <summary>What a flat window of clear layers, a wall or a wall and water behind it, does to the place where a subject is seen.</summary>
/// <remarks>All lengths run along the ray that reaches the lens; layers are plane and parallel.</remarks>
public static class LayeredWindow
{
    /// <summary>Length of air that looks as long as the layers, across the plane of incidence.</summary>
    /// <param name="layers">The layers.</param>
    /// <param name="incidence">Angle in air from the normal θ [rad]; 0 to under π/2.</param>
    /// <returns>Σ t/(n·cos θ′) [m]; t/n head-on, which is the apparent depth.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "refraction of a narrow pencil at a plane face, sagittal: s′/n′ = s/n, §4.6")]
    public static double ApparentLength(IReadOnlyList<WindowLayer> layers, double incidence) => Sum(layers, incidence, (layer, cosine, _) => layer.Thickness / (layer.RefractiveIndex * cosine));

    /// <summary>The same in the plane of incidence.</summary>
    /// <inheritdoc cref="ApparentLength" path="/param"/>
    /// <returns>Σ t·cos² θ/(n·cos³ θ′) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "refraction of a narrow pencil at a plane face, tangential: s′·cos² θ′ : s·cos² θ as n′ : n, §4.6")]
    public static double ApparentLengthAlong(IReadOnlyList<WindowLayer> layers, double incidence)
    {
        return Sum(layers, incidence, (layer, cosine, outside) => layer.Thickness * outside * outside / (layer.RefractiveIndex * cosine * cosine * cosine));
    }

    /// <summary>Distance between the two planes that are sharp for lines along and across the plane of incidence.</summary>
    /// <inheritdoc cref="ApparentLength" path="/param"/>
    /// <returns>Astigmatic difference [m]; 0 head-on, where nothing is drawn apart.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "difference of the two apparent lengths")]
    public static double AstigmaticDifference(IReadOnlyList<WindowLayer> layers, double incidence) => ApparentLength(layers, incidence) - ApparentLengthAlong(layers, incidence);

    /// <summary>Length of the ray within the layers.</summary>
    /// <inheritdoc cref="ApparentLength" path="/param"/>
    /// <returns>Σ t/cos θ′ [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "law of refraction, §1.5")]
    public static double RayLength(IReadOnlyList<WindowLayer> layers, double incidence) => Sum(layers, incidence, (layer, cosine, _) => layer.Thickness / cosine);

    /// <summary>How far a ray runs along the window within its layers.</summary>
    /// <inheritdoc cref="ApparentLength" path="/param"/>
    /// <returns>Σ t·tan θ′ [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "law of refraction, §1.5")]
    public static double Run(IReadOnlyList<WindowLayer> layers, double incidence) => Sum(layers, incidence, (layer, cosine, _) => layer.Thickness * Math.Sqrt(1 - (cosine * cosine)) / cosine);

    /// <summary>Angle at which light of a point before a window meets it on the way to a point at its back.</summary>
    /// <param name="layers">The layers.</param>
    /// <param name="air">Distance of the point before it from its face [m]; &gt; 0.</param>
    /// <param name="aside">How far apart the two points are along the window [m]; ≥ 0.</param>
    /// <returns>Angle in air from the normal [rad]; 0 to under π/2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "law of refraction, §1.5, solved by bisection")]
    public static double IncidenceBetween(IReadOnlyList<WindowLayer> layers, double air, double aside)
    {
        var (least, most) = (0.0, Math.Atan2(Guard.NonNegative(aside), Guard.Positive(air)));

        // The straight line in air alone is the flattest that it can be; the run grows with the angle.
        const int Halvings = 50;
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (least + most) / 2;
            (least, most) = (air * Math.Tan(middle)) + Run(layers, middle) < aside ? (middle, most) : (least, middle);
        }

        return (least + most) / 2;
    }

    private static double Sum(IReadOnlyList<WindowLayer> layers, double incidence, Func<WindowLayer, double, double, double> part)
    {
        ArgumentNullException.ThrowIfNull(layers);
        var (sine, outside) = Math.SinCos(Guard.Between(incidence, 0, (Math.PI / 2) - 1e-9));
        var sum = 0.0;
        for (var i = 0; i < layers.Count; i++)
        {
            var n = Guard.Between(layers[i].RefractiveIndex, 1, 10, nameof(layers));
            _ = Guard.NonNegative(layers[i].Thickness, nameof(layers));
            sum += part(layers[i], Math.Sqrt(1 - (sine * sine / (n * n))), outside);
        }

        return sum;
    }
}
