namespace StudioKit.Web.Storage;

/// <summary>How the page itself is kept on this device.</summary>
public enum PageCopyState
{
    /// <summary>Nothing is known yet.</summary>
    Unknown,

    /// <summary>The browser keeps no page, as in a window that is to leave no traces or at an address that is not safe.</summary>
    None,

    /// <summary>The copy is being made.</summary>
    Getting,

    /// <summary>The copy is whole: the page works without a network.</summary>
    Whole,

    /// <summary>A newer page lies ready beside the one in use.</summary>
    Newer,
}
