namespace StudioKit.Field.Log.Release;

/// <summary>Why a field leaves the log as it does.</summary>
public enum FieldReason
{
    /// <summary>Nothing in its session is sensitive.</summary>
    NothingSensitive,

    /// <summary>It tells nothing of the place.</summary>
    TellsNoPlace,

    /// <summary>The user released it.</summary>
    Released,

    /// <summary>The middle of a cell stands for the place.</summary>
    Cell,

    /// <summary>The day stands for the time.</summary>
    Day,

    /// <summary>A name that tells nothing stands for one that may.</summary>
    NeutralName,

    /// <summary>It is the place, or so near to it that it is not told at all.</summary>
    IsThePlace,

    /// <summary>The place is known so badly that no cell holds it.</summary>
    NoCellHoldsIt,

    /// <summary>Words may describe the place.</summary>
    WordsMayTell,

    /// <summary>It holds a word of the place's or the session's name.</summary>
    HoldsPlaceWord,

    /// <summary>A time to the minute can be matched with other records and pictures.</summary>
    TimeMayTell,
}
