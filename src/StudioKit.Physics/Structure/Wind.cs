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

    /// <summary>Gust of three seconds over the mean of ten minutes, roughly open land [1].</summary>
    /// <remarks>Given for tropical cyclones; ordinary wind gusts a tenth less, so that it errs on the safe side.</remarks>
    [Source("WmoTd1555", "table 1.1, in-land, 600 s to 3 s")]
    public const double GustFactor = 1.66;

    /// <summary>Dynamic pressure.</summary>
    /// <param name="speed">Wind speed v [m/s]; ≥ 0.</param>
    /// <returns>ρv²/2 [Pa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range, or not finite.</exception>
    [Source("NASA-Drag", "drag equation")]
    public static double Pressure(double speed) => AirDensity * Guard.NonNegative(speed) * speed / 2;
}
