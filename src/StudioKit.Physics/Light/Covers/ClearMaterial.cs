namespace StudioKit.Physics.Light.Covers;

/// <summary>What a clear cover is made of.</summary>
public enum ClearMaterial
{
    /// <summary>Acrylic sheet or a moulded acrylic dome.</summary>
    Acrylic,

    /// <summary>Window or aquarium glass.</summary>
    Glass,

    /// <summary>Clear polystyrene, as small boxes and dishes are.</summary>
    Polystyrene,

    /// <summary>Polycarbonate.</summary>
    Polycarbonate,

    /// <summary>Clear polyester, as food tubs are.</summary>
    Polyester,
}
