using UnitsNet;

namespace StudioKit.Planning;

/// <summary>The cells of one flash.</summary>
public sealed record CellStock
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>Name of the cell.</summary>
    public required string Cell { get; init; }

    /// <summary>Cells carried, those in the flash included [1].</summary>
    public required int Count { get; init; }

    /// <summary>Energy of one cell.</summary>
    public required Energy EnergyEach { get; init; }

    /// <summary>Full-power flashes from all of them [1].</summary>
    public required int FullPowerFlashes { get; init; }

    /// <summary>What air rules say of them, one sentence.</summary>
    public string AirTravel { get; init; } = "";
}
