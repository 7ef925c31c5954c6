namespace StudioKit.Planning.Studio.Assembling;

/// <summary>A side of the frame as the camera sees it.</summary>
public enum FrameSide
{
    /// <summary>On the left.</summary>
    Left,

    /// <summary>On the right.</summary>
    Right,
}
