namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>The end of the power dial that stands in the way of a wanted level.</summary>
public enum PowerLimit
{
    /// <summary>Neither: the level is reached.</summary>
    None,

    /// <summary>Full power, or the highest setting allowed, is too little.</summary>
    FullPower,

    /// <summary>The lowest setting is too much.</summary>
    LowestPower,
}
