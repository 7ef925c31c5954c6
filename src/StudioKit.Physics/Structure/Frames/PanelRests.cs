namespace StudioKit.Physics.Structure.Frames;

/// <summary>Which edges of the flat panel have pads, or a ledge, under them.</summary>
public enum PanelRests
{
    /// <summary>All four.</summary>
    AllEdges,

    /// <summary>The front and the back edge only, so that the panel spans its depth as a strip.</summary>
    FrontAndBack,
}
