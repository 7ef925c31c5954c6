namespace StudioKit.Physics.Optics;

/// <summary>What keeps a magnification out of reach.</summary>
public enum ReachLimitKind
{
    /// <summary>Everything on hand together gives less.</summary>
    TooLarge,

    /// <summary>The lens gives more whatever is taken off.</summary>
    TooSmall,

    /// <summary>It falls between what the combinations on hand reach.</summary>
    Between,
}
