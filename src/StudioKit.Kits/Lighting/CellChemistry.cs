namespace StudioKit.Kits.Lighting;

/// <summary>What a cell is made of; air rules depend on it.</summary>
public enum CellChemistry
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
