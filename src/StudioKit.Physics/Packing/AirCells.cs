using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Energy of cells against air passenger rules.</summary>
public static class AirCells
{
    private const double FreeWattHours = 100;
    private const double ApprovedWattHours = 160;
    private const double FreeLithiumGrams = 2;
    private const double ApprovedLithiumGrams = 8;
    private const string AsOf = "copy without a date; the upper limits from memory";

    /// <summary>Energy that a cell or battery holds.</summary>
    /// <param name="volts">Nominal voltage [V]; &gt; 0.</param>
    /// <param name="ampereHours">Charge [Ah]; &gt; 0.</param>
    /// <returns>V·Ah [Wh].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("TSA-Batteries", "watt hours = volts × ampere hours")]
    public static double WattHours(double volts, double ampereHours) => Guard.Positive(volts) * Guard.Positive(ampereHours);

    /// <summary>How a cell or battery may fly.</summary>
    /// <param name="kind">What it is made of.</param>
    /// <param name="voltage">Nominal voltage; &gt; 0.</param>
    /// <param name="charge">Charge it holds; &gt; 0.</param>
    /// <param name="lithium">Lithium in a lithium-metal cell; one gram, an AA cell's, where none is given.</param>
    /// <returns>The rule that applies.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A quantity is not above zero, or the kind unknown.</exception>
    [Source("TSA-Batteries", "lithium batteries")]
    [Source("IATA-DGR", "table 2.3.A")]
    public static AirCellRule RuleFor(CellKind kind, ElectricPotential voltage, ElectricCharge charge, Mass? lithium = null)
    {
        var energy = Energy.FromWattHours(WattHours(voltage.Volts, charge.AmpereHours));
        var (flies, rule) = kind switch
        {
            CellKind.NickelMetalHydride or CellKind.Alkaline =>
                (AirCellClass.NoEnergyLimit, "No energy limit; protect the ends from short circuit, spares best in the cabin."),
            CellKind.LithiumIon => IonRule(energy.WattHours),
            CellKind.LithiumMetal => MetalRule(Guard.Positive(lithium?.Grams ?? 1, nameof(lithium))),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Unknown kind of cell."),
        };
        return new AirCellRule(flies, energy, rule, AsOf, flies == AirCellClass.NotAllowed ? "IATA-DGR" : "TSA-Batteries");
    }

    // Packs are rated to a tenth of a watt hour, so 100.0 from floating point must not fail.
    private static (AirCellClass Class, string Rule) IonRule(double wattHours) => Math.Round(wattHours, 3) switch
    {
        <= FreeWattHours => (AirCellClass.Cabin, "Up to 100 Wh: in the cabin, spares never in checked bags, ends taped."),
        <= ApprovedWattHours => (AirCellClass.AskAirline, "Over 100 Wh to 160 Wh: two spares at most, only with the airline's approval."),
        _ => (AirCellClass.NotAllowed, "Over 160 Wh: not allowed for passengers."),
    };

    private static (AirCellClass Class, string Rule) MetalRule(double grams) => grams switch
    {
        <= FreeLithiumGrams => (AirCellClass.Cabin, "Up to 2 g of lithium: in the cabin, spares never in checked bags, ends taped."),
        <= ApprovedLithiumGrams => (AirCellClass.AskAirline, "Over 2 g to 8 g of lithium: only with the airline's approval."),
        _ => (AirCellClass.NotAllowed, "Over 8 g of lithium: not allowed for passengers."),
    };
}
