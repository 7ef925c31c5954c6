using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>How much a sheet grows on its ledge.</summary>
public static class ThermalGrowth
{
    /// <summary>Growth by warmth and moisture together, as a share of the length, that acrylic can reach [1].</summary>
    public const double MostShare = 0.005;

    /// <summary>Growth of a length.</summary>
    /// <param name="expansion">Linear thermal expansion α [1/K]; ≥ 0.</param>
    /// <param name="length">Length L [m]; ≥ 0.</param>
    /// <param name="warming">Rise of temperature ΔT [K]; negative for cooling.</param>
    /// <returns>α·L·ΔT [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "thermal effects")]
    public static double Of(double expansion, double length, double warming) =>
        Guard.NonNegative(expansion) * Guard.NonNegative(length) * Guard.Finite(warming);

    /// <summary>Room needed at each of two edges of a sheet in a frame.</summary>
    /// <param name="sheetExpansion">Expansion of the sheet [1/K]; ≥ 0.</param>
    /// <param name="frameExpansion">Expansion of the frame [1/K]; ≥ 0.</param>
    /// <param name="length">Length of the sheet L [m]; ≥ 0.</param>
    /// <param name="warming">Rise of temperature ΔT [K]; ≥ 0.</param>
    /// <returns>Half of what the sheet grows more than the frame [m]; ≥ 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("AcrylicDesignNote", "room for expansion")]
    public static double EdgeRoom(double sheetExpansion, double frameExpansion, double length, double warming) =>
        Math.Max(0, Of(sheetExpansion, length, Guard.NonNegative(warming)) - Of(frameExpansion, length, warming)) / 2;
}
