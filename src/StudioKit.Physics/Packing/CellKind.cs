namespace StudioKit.Physics.Packing;

/// <summary>What a cell is made of.</summary>
public enum CellKind
{
    /// <summary>Rechargeable nickel–metal hydride.</summary>
    NickelMetalHydride,

    /// <summary>Primary alkaline.</summary>
    Alkaline,

    /// <summary>Primary lithium metal.</summary>
    LithiumMetal,

    /// <summary>Rechargeable lithium-ion.</summary>
    LithiumIon,
}
