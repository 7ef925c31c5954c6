namespace StudioKit.Physics.Structure;

/// <summary>How an acrylic sheet was made; its thickness tolerance depends on it.</summary>
public enum SheetMaking
{
    /// <summary>Cast between plates.</summary>
    Cast,

    /// <summary>Extruded.</summary>
    Extruded,
}
