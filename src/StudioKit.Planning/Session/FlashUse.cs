namespace StudioKit.Planning.Session;

/// <summary>What a day asks of one flash and its cells.</summary>
public sealed record FlashUse
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>Flashes fired in the day [1].</summary>
    public required int Flashes { get; init; }

    /// <summary>The same as full-power flashes [1].</summary>
    public required double FullPowerFlashes { get; init; }

    /// <summary>Sets of cells used up, begun ones counted whole, a fifth of each kept in reserve [1].</summary>
    public required int SetsNeeded { get; init; }

    /// <summary>Sets carried, the one in the flash too [1].</summary>
    public required int SetsCarried { get; init; }

    /// <summary>Cells in a set [1]; nought for a flash with its own battery.</summary>
    public required int CellsPerSet { get; init; }

    /// <summary>Flashes at the session's mean power that the sets carried give [1].</summary>
    public required int FlashesCarried { get; init; }

    /// <summary>Whether the sets carried last.</summary>
    public required bool Enough { get; init; }
}
