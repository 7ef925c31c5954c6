namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Which click of the power dial is taken for a power between two clicks.</summary>
internal enum PowerRounding
{
    /// <summary>The brighter one, where too little light fails.</summary>
    Brighter,

    /// <summary>The nearer one.</summary>
    Nearest,

    /// <summary>The darker one, where too much light shows.</summary>
    Darker,
}
