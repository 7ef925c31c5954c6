using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>A battery cell or pack.</summary>
public sealed record CellSpec
{
    /// <summary>Name on the sheets.</summary>
    public required string Name { get; init; }

    /// <summary>What it is made of.</summary>
    public required CellChemistry Chemistry { get; init; }

    /// <summary>Nominal voltage.</summary>
    public required ElectricPotential Voltage { get; init; }

    /// <summary>Charge it holds, e.g. <c>2000 mAh</c>.</summary>
    public required ElectricCharge Capacity { get; init; }

    /// <summary>Mass of one cell.</summary>
    public required Mass Mass { get; init; }
}
