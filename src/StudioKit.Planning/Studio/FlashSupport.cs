namespace StudioKit.Planning.Studio;

/// <summary>What holds a flash under the panel.</summary>
public enum FlashSupport
{
    /// <summary>A cradle of its own.</summary>
    Cradle,

    /// <summary>The cradle of a flash before it, in the same place.</summary>
    SharedCradle,

    /// <summary>The ground: it is to lie so low that no rail goes under it.</summary>
    Ground,

    /// <summary>A stand of its own, as the frame cannot carry it there.</summary>
    OwnStand,
}
