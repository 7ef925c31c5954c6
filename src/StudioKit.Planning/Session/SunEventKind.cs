namespace StudioKit.Planning.Session;

/// <summary>What the sun does in a day.</summary>
public enum SunEventKind
{
    /// <summary>Night turns to civil twilight, the sun 6° under the horizon.</summary>
    Daybreak,

    /// <summary>Its upper edge comes up.</summary>
    Sunrise,

    /// <summary>It stands highest.</summary>
    TrueNoon,

    /// <summary>Its upper edge goes down.</summary>
    Sunset,

    /// <summary>Civil twilight turns to night, the sun 6° under the horizon.</summary>
    Nightfall,
}
