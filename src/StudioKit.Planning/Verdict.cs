namespace StudioKit.Planning;

/// <summary>Whether an exposure does what the set-up asks.</summary>
public enum Verdict
{
    /// <summary>Every limit is kept.</summary>
    Works,

    /// <summary>A limit is missed by no more than the plan itself is unsure of: it can be used, and costs something.</summary>
    AtTheEdge,

    /// <summary>A limit is missed by more than that.</summary>
    DoesNotWork,
}
