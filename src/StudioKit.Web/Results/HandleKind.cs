namespace StudioKit.Web.Results;

/// <summary>What of the studio can be moved.</summary>
public enum HandleKind
{
    /// <summary>A flash below, across the view.</summary>
    FlashRight,

    /// <summary>A flash below, along the view.</summary>
    FlashBack,

    /// <summary>A flash below, to and from the panel.</summary>
    FlashDistance,

    /// <summary>A flash above, to and from the subject.</summary>
    UpperDistance,

    /// <summary>The panel's sides.</summary>
    PanelWidth,

    /// <summary>The panel's front and back.</summary>
    PanelDepth,

    /// <summary>The camera's angle.</summary>
    CameraPitch,
}
