namespace StudioKit.Field.Ladders;

/// <summary>How sure the power is at which a cell clips.</summary>
public enum LadderCellKind
{
    /// <summary>No frame shows the cell between black and clipping, so nothing is known.</summary>
    Unknown,

    /// <summary>White in every frame: it clips at the lowest power tried or below.</summary>
    AtMost,

    /// <summary>White in some frames and not in others: the power lies between two rungs.</summary>
    Bracketed,

    /// <summary>White in no frame: the power is reckoned from how far under clipping it stays.</summary>
    Extrapolated,
}
