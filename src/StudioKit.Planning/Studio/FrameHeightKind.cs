namespace StudioKit.Planning.Studio;

/// <summary>What of a frame has a height that is measured off.</summary>
public enum FrameHeightKind
{
    /// <summary>The floor of the caps, which the feet lift.</summary>
    CapFloor,

    /// <summary>A rail.</summary>
    Rail,

    /// <summary>A rail that carries a flash.</summary>
    CradleRail,

    /// <summary>The bright window of a flash under the panel.</summary>
    FlashWindow,

    /// <summary>The underside of the flat panel.</summary>
    PanelUnderside,
}
