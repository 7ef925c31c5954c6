using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>What wind presses with.</summary>
public static class Wind
{
    /// <summary>Density of air at 15 °C at sea level [kg/m³].</summary>
    public const double AirDensity = 1.225;

    /// <summary>Drag coefficient of a flat plate across the wind [1].</summary>
    [Source("NASA-Drag", "shape effects, flat plate")]
    public const double PlateDrag = 1.28;

    /// <summary>Drag coefficient of a pipe across the wind [1], for Reynolds numbers of 10³ to 10⁵.</summary>
    [Source("WindProfile", "circular cylinder, from memory")]
    public const double PipeDrag = 1.2;

    /// <summary>Roughness length of grassland [m].</summary>
    [Source("WindProfile", "roughness lengths, from memory")]
    public const double GrassRoughness = 0.03;

    /// <summary>Dynamic pressure.</summary>
    /// <param name="speed">Wind speed v [m/s]; ≥ 0.</param>
    /// <returns>ρv²/2 [Pa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range, or not finite.</exception>
    [Source("NASA-Drag", "drag equation")]
    public static double Pressure(double speed) => AirDensity * Guard.NonNegative(speed) * speed / 2;

    /// <summary>Share of the speed at 10 m that blows lower down.</summary>
    /// <param name="height">Height over ground z [m]; above the roughness length.</param>
    /// <param name="roughness">Roughness length z₀ [m]; above 0, under 10.</param>
    /// <returns>ln(z/z₀)/ln(10 m/z₀) [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("WindProfile", "logarithmic profile")]
    public static double ShareAtHeight(double height, double roughness)
    {
        Guard.Between(Guard.Positive(roughness), 0, 9.99);
        return Math.Log(Guard.Positive(height) / Guard.Between(roughness, 0, height)) / Math.Log(10 / roughness);
    }
}
