namespace StudioKit.Field.Log.Release;

/// <summary>How a field can tell the exact place of what was recorded.</summary>
internal enum PlaceClue
{
    /// <summary>Not at all: a number of the exposure, a country.</summary>
    None,

    /// <summary>It is a coordinate, which is told by its cell.</summary>
    Coordinate,

    /// <summary>It is the place.</summary>
    Place,

    /// <summary>Words of any kind, which may describe the place.</summary>
    Words,

    /// <summary>A name or a word of a kind that is no place, unless a place's name is in it.</summary>
    Names,

    /// <summary>A scientific name, whose first word is its genus; what follows it is of the kind above.</summary>
    Taxon,

    /// <summary>The time of a session, which another record or picture of that minute can be found by; its day is told.</summary>
    Day,

    /// <summary>Any other time.</summary>
    Moment,

    /// <summary>An identifier or file name, which may hold a time, a place's name or a folder.</summary>
    Identifier,
}
