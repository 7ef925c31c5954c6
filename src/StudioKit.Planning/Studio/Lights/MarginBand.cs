namespace StudioKit.Planning.Studio.Lights;

/// <summary>What a map over the frame tells apart.</summary>
public enum MarginBand
{
    /// <summary>Nothing is known.</summary>
    Unknown,

    /// <summary>Not white, or darker than planned.</summary>
    Dark,

    /// <summary>White with too little to spare.</summary>
    Tight,

    /// <summary>White with enough to spare.</summary>
    White,

    /// <summary>As planned.</summary>
    Same,

    /// <summary>Brighter than planned.</summary>
    Bright,
}
