namespace StudioKit.Web.Storage;

/// <summary>How the kit in hand is kept.</summary>
public enum KeepingState
{
    /// <summary>No kit is in hand.</summary>
    Nothing,

    /// <summary>A change is being saved.</summary>
    Saving,

    /// <summary>All of it is saved on this device.</summary>
    Saved,

    /// <summary>It cannot be saved.</summary>
    NotSaved,

    /// <summary>Another tab works on it, so that nothing of it is saved from this one.</summary>
    Elsewhere,

    /// <summary>It was thrown away, and is taken back by the next change.</summary>
    ThrownAway,
}
