namespace StudioKit.Planning.Covers;

/// <summary>What limits the stay in a cover.</summary>
public enum CoverStayKind
{
    /// <summary>The kit's own limit.</summary>
    Given,

    /// <summary>What is usual; common practice, no source.</summary>
    Usual,

    /// <summary>A wet skin fogs the walls.</summary>
    Fog,
}
