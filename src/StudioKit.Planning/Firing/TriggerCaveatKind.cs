namespace StudioKit.Planning.Firing;

/// <summary>What to bear in mind of how flashes are fired (common practice, no source).</summary>
public enum TriggerCaveatKind
{
    /// <summary>An optical cell behind a sheet and skirts may not see the other flashes.</summary>
    CellUnderSheet,

    /// <summary>The sun dazzles an optical cell.</summary>
    CellInSun,

    /// <summary>A metered flash sends a flash ahead, on which an optical cell fires too early.</summary>
    CellBeforeTime,
}
