namespace StudioKit.Physics.Structure.Frames;

/// <summary>An edge of the panel as the camera sees it.</summary>
public enum PanelEdge
{
    /// <summary>Nearest to the camera.</summary>
    Front,

    /// <summary>At the back of the flat part.</summary>
    Back,

    /// <summary>On the left.</summary>
    Left,

    /// <summary>On the right.</summary>
    Right,

    /// <summary>The upper edge of a swept sheet.</summary>
    Top,
}
