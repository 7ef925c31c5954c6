namespace StudioKit.Physics.Structure.Frames;

/// <summary>Kinds of pipe fitting.</summary>
public enum FittingKind
{
    /// <summary>Two ports at right angles.</summary>
    Elbow,

    /// <summary>A straight run and one branch at right angles.</summary>
    Tee,

    /// <summary>Four ports in one plane.</summary>
    Cross,

    /// <summary>Three ports at right angles to one another.</summary>
    Corner,

    /// <summary>Two ports in line.</summary>
    Coupling,

    /// <summary>One port, closed.</summary>
    Cap,
}
