namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>What a rescue has to say of a damaged log.</summary>
public enum RescueNoteKind
{
    /// <summary>A page of a table cannot be read; what it held is lost, unless it is found elsewhere.</summary>
    PageUnreadable,

    /// <summary>Some rows of a page cannot be read.</summary>
    RowsUnreadable,

    /// <summary>A table is missing.</summary>
    TableMissing,

    /// <summary>The journal ends within a change, which is lost.</summary>
    JournalCut,

    /// <summary>The log has no seals, as an earlier version wrote it: a bit that flipped within a text goes unnoticed.</summary>
    NoSeals,

    /// <summary>A later program wrote the log; what this one does not know is not read.</summary>
    LaterVersion,

    /// <summary>A value is none that a record can hold; something safe stands in its place.</summary>
    ValueLeftOut,

    /// <summary>A record is kept as it was found, though it is not as it was written.</summary>
    Doubtful,

    /// <summary>A record was lost and is back from the history; it may be an older state.</summary>
    FromHistory,

    /// <summary>A record was found outside of its table; it may be an older state, or have been taken out.</summary>
    FromOutside,

    /// <summary>A record breaks the rules of the log and was left behind.</summary>
    AgainstRules,

    /// <summary>A lost session or subject, of which others are left, was made up with nothing in it but a date.</summary>
    StandIn,
}
