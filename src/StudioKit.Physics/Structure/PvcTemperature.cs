using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>What warmth leaves of PVC's strength and stiffness at 23 °C.</summary>
public static class PvcTemperature
{
    /// <summary>Hottest that PVC pipe may carry anything [°C].</summary>
    public const double Hottest = 60;

    private static readonly (double, double)[] Strength =
        [(23, 1.00), (26.7, 0.88), (32.2, 0.75), (37.8, 0.62), (43.3, 0.51), (48.9, 0.40), (54.4, 0.31), (60, 0.22)];

    private static readonly (double, double)[] Modulus =
        [(23, 1.00), (32.2, 0.93), (37.8, 0.88), (43.3, 0.84), (48.9, 0.79), (54.4, 0.75), (60, 0.70)];

    /// <summary>Share of strength.</summary>
    /// <param name="celsius">Temperature of the pipe [°C]; −273.15 to 60. Below 23 it counts as 23.</param>
    /// <returns>Share of the strength at 23 °C [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pipe is hotter than 60 °C, or the number not finite.</exception>
    [Source("PPFA-UB3", "derating factors, read between rows by straight lines")]
    public static double StrengthFactor(double celsius) => LinearTable.At(Strength, Checked(celsius));

    /// <summary>Share of stiffness.</summary>
    /// <param name="celsius">Temperature of the pipe [°C]; −273.15 to 60. Below 23 it counts as 23.</param>
    /// <returns>Share of Young's modulus at 23 °C [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The pipe is hotter than 60 °C, or the number not finite.</exception>
    [Source("PlasticPipeHandbook", "modulus against temperature")]
    public static double ModulusFactor(double celsius) => LinearTable.At(Modulus, Checked(celsius));

    private static double Checked(double celsius) => Guard.Between(celsius, -273.15, Hottest);
}
