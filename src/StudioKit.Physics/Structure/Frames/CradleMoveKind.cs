namespace StudioKit.Physics.Structure.Frames;

/// <summary>Which way a flash below the panel, or the panel over it, is moved.</summary>
public enum CradleMoveKind
{
    /// <summary>The flash nearer the panel.</summary>
    Up,

    /// <summary>The flash further from the panel.</summary>
    Down,

    /// <summary>The flash to the left.</summary>
    Left,

    /// <summary>The flash to the right.</summary>
    Right,

    /// <summary>The flash to the front.</summary>
    Front,

    /// <summary>The flash to the back.</summary>
    Back,

    /// <summary>The panel up, and the flash with it.</summary>
    RaisePanel,
}
