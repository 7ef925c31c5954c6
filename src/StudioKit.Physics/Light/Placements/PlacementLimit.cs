namespace StudioKit.Physics.Light.Placements;

/// <summary>What keeps a placement from serving every framing.</summary>
public enum PlacementLimit
{
    /// <summary>Nothing: it serves them all.</summary>
    None,

    /// <summary>The brightest visible point lies over the veil's bound.</summary>
    Veil,

    /// <summary>Full power leaves the darkest visible point under its target.</summary>
    FullPower,

    /// <summary>A framing sees past the panel.</summary>
    PanelTooSmall,

    /// <summary>The flash would stand in the ground or through a skirt, or throw no light at the panel.</summary>
    Geometry,
}
