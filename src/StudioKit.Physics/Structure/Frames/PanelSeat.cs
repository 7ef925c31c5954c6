namespace StudioKit.Physics.Structure.Frames;

/// <summary>How the panel sits in the frame.</summary>
public enum PanelSeat
{
    /// <summary>On pads upon the rails, flush with their outsides.</summary>
    OverRails,

    /// <summary>Between the rails, on a ledge clipped to them.</summary>
    InsideRails,
}
