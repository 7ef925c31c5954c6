namespace StudioKit.Planning.Session;

/// <summary>In which rounds of a block a step is done.</summary>
public enum RoundPart
{
    /// <summary>Before the first round alone.</summary>
    First,

    /// <summary>Before each round but the first.</summary>
    Following,

    /// <summary>In every round.</summary>
    Every,
}
