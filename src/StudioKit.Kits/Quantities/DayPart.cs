namespace StudioKit.Kits.Quantities;

/// <summary>A part of the day by the height of the sun.</summary>
public enum DayPart
{
    /// <summary>From sunrise to sunset.</summary>
    Day,

    /// <summary>While the sun is more than 6° under the horizon.</summary>
    Night,

    /// <summary>From the beginning of nautical twilight, the sun 12° under the horizon, to sunrise.</summary>
    Dawn,

    /// <summary>From sunset to the end of nautical twilight, the sun 12° under the horizon.</summary>
    Dusk,
}
