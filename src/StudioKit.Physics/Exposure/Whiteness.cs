namespace StudioKit.Physics.Exposure;

/// <summary>Whether a background comes out white.</summary>
public enum Whiteness
{
    /// <summary>It does: the margin meets its target, and two to one that it clips.</summary>
    White,

    /// <summary>It may or may not.</summary>
    AtTheEdge,

    /// <summary>It does not: under clipping by more than its uncertainty.</summary>
    NotWhite,
}
