using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Energy of a battery flash: capacitor, recycle time, and how many flashes a set of cells gives.</summary>
/// <remarks>Charged capacitors of flashes can kill: these numbers are for planning, not for opening one.</remarks>
public static class FlashEnergy
{
    /// <summary>Even a small charge takes this long to start and report.</summary>
    public static readonly Duration ShortestRecycle = Duration.FromSeconds(0.1);

    /// <summary>Time to be ready again.</summary>
    /// <param name="afterFullPower">Recycle time after a full-power flash; &gt; 0 s.</param>
    /// <param name="power">Power setting P.</param>
    /// <returns>P times that, at least 0.1 s or the full time where that is shorter [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is not above zero.</exception>
    [Source("Derived", "a quenched flash spends, and replaces, its share of the charge")]
    public static Duration RecycleTime(Duration afterFullPower, FlashPower power)
    {
        var full = Guard.Positive(afterFullPower.Seconds, nameof(afterFullPower));
        return Duration.FromSeconds(Math.Max(full * power.Fraction, Math.Min(full, ShortestRecycle.Seconds)));
    }

    /// <summary>What a flash takes from its cells, against one at full power.</summary>
    /// <remarks>Under about 1/16 power the flash's standby drain weighs as much as the flash, so no setting takes less than that.</remarks>
    /// <param name="power">Power setting P.</param>
    /// <returns>P, at least 1/16 [1].</returns>
    [Source("Derived", "a quenched flash spends its share of the charge; the floor is from memory")]
    public static double ShareOfCells(FlashPower power) => Math.Max(power.Fraction, 1.0 / 16);

    /// <summary>Full-power flashes that a set of cells holds.</summary>
    /// <param name="cellCount">Cells in the set [1]; ≥ 1.</param>
    /// <param name="capacity">Charge of one cell; &gt; 0 C.</param>
    /// <param name="voltage">Voltage of one cell; &gt; 0 V.</param>
    /// <param name="flashEnergy">Energy of one flash; &gt; 0 J.</param>
    /// <param name="efficiency">Share of the cells' energy that reaches the capacitor [1]; above 0, at most 1.</param>
    /// <returns>Flashes per set [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Derived", "energy of the cells over energy of a flash; efficiency 50 to 70 % from memory")]
    public static int FlashesFromCells(
        int cellCount, ElectricCharge capacity, ElectricPotential voltage, Energy flashEnergy, double efficiency = 0.5)
    {
        Guard.Between(cellCount, 1, 1e4);
        var cells = cellCount * Guard.Positive(capacity.Coulombs, nameof(capacity)) * Guard.Positive(voltage.Volts, nameof(voltage));
        var count = cells * Guard.Between(Guard.Positive(efficiency), 0, 1) / Guard.Positive(flashEnergy.Joules, nameof(flashEnergy));
        return (int)Math.Min(Math.Floor(count), int.MaxValue);
    }
}
