namespace StudioKit.Kits.Lighting;

/// <summary>What goes before a flash.</summary>
public enum ModifierKind
{
    /// <summary>A translucent cap over the head that spreads light all round.</summary>
    Dome,

    /// <summary>A box with a translucent front.</summary>
    Softbox,

    /// <summary>A flat translucent sheet before the head.</summary>
    Flat,
}
