namespace StudioKit.Web.Storage;

/// <summary>What the user is told once about the kits.</summary>
public enum KeepingNoticeKind
{
    /// <summary>A page died while it was opening a kit, so that it was not opened again.</summary>
    DiedOver,

    /// <summary>Another tab saved a newer state; what was changed here is kept under another name.</summary>
    KeptAsCopy,

    /// <summary>A file was opened; a kit with its name was there already, so that it has another name.</summary>
    NameTaken,

    /// <summary>A file was opened that is on this device already, word for word.</summary>
    KnownAlready,

    /// <summary>A file was opened and is kept.</summary>
    Opened,

    /// <summary>A part was put beside a kit.</summary>
    PartTaken,

    /// <summary>A part was opened that no kit names.</summary>
    PartUnnamed,

    /// <summary>Another part of the same name lies beside the kit.</summary>
    PartOther,

    /// <summary>A correction is kept with the kit in hand.</summary>
    Corrected,

    /// <summary>A correction was measured for another kit than the one in hand.</summary>
    CorrectionOfOther,

    /// <summary>Another correction is kept with the kit in hand already.</summary>
    CorrectionThere,

    /// <summary>A file could not be opened.</summary>
    NotOpened,

    /// <summary>All kits were written into one file.</summary>
    Exported,

    /// <summary>A kit was thrown away.</summary>
    ThrownAway,
}
