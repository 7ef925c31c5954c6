namespace StudioKit.Planning.Checks;

/// <summary>What a check is about, seen from far: which question a failing one answers with no.</summary>
public enum CheckConcern
{
    /// <summary>Can the studio be built, and does it stand?</summary>
    Building,

    /// <summary>Do the cards hold: framings, guide numbers and exposures?</summary>
    Cards,

    /// <summary>Can it be carried?</summary>
    Carrying,

    /// <summary>Is there time, and power, for the day?</summary>
    Day,
}
