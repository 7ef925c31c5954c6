using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>The cells of one flash.</summary>
public sealed record CellStock
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>Name of the cell.</summary>
    public required string Cell { get; init; }

    /// <summary>Cells carried, those in the flash included [1].</summary>
    public required int Count { get; init; }

    /// <summary>Cells of them that are spare [1].</summary>
    public required int Spare { get; init; }

    /// <summary>Energy of one cell.</summary>
    public required Energy EnergyEach { get; init; }

    /// <summary>Energy of all of them.</summary>
    public Energy EnergyTotal => EnergyEach * Count;

    /// <summary>Full-power flashes from all of them, a fifth of each set kept in reserve [1].</summary>
    public required int FullPowerFlashes { get; init; }

    /// <summary>How they may fly, by which rule of what date.</summary>
    public required AirCellRule Air { get; init; }
}
