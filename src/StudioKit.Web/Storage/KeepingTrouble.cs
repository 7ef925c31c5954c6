namespace StudioKit.Web.Storage;

/// <summary>Why something cannot be kept.</summary>
public enum KeepingTrouble
{
    /// <summary>The browser gives no more room.</summary>
    Full,

    /// <summary>A newer page wrote the kits, in a way that this one does not know.</summary>
    NewerPage,

    /// <summary>An older page in another tab holds on to the kits.</summary>
    Waiting,

    /// <summary>The browser refuses, as in a window that is to leave no traces.</summary>
    Refused,
}
