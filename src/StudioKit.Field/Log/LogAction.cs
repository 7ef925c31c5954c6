namespace StudioKit.Field.Log;

/// <summary>What was done to a log in one go.</summary>
public enum LogAction
{
    /// <summary>Records were put in, others perhaps changed with them.</summary>
    Recorded,

    /// <summary>Records that were there were changed.</summary>
    Edited,

    /// <summary>Records were taken out.</summary>
    Deleted,

    /// <summary>An archive was taken in.</summary>
    Imported,

    /// <summary>What could be read of a damaged log was taken in.</summary>
    Rescued,

    /// <summary>An earlier change was taken back.</summary>
    Undone,

    /// <summary>A change that had been taken back was made again.</summary>
    Redone,
}
