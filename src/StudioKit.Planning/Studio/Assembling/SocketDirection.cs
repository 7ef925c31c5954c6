namespace StudioKit.Planning.Studio.Assembling;

/// <summary>Where a socket points in the frame as it stands, left, right, front and back as the camera sees them.</summary>
public enum SocketDirection
{
    /// <summary>To the left.</summary>
    Left,

    /// <summary>To the right.</summary>
    Right,

    /// <summary>Towards the camera.</summary>
    Front,

    /// <summary>Away from the camera.</summary>
    Back,

    /// <summary>Up.</summary>
    Up,

    /// <summary>Down.</summary>
    Down,
}
