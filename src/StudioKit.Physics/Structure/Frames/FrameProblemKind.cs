namespace StudioKit.Physics.Structure.Frames;

/// <summary>What stops a frame being built or packed.</summary>
public enum FrameProblemKind
{
    /// <summary>The height leaves no room for legs; to be raised from the size to the limit given.</summary>
    NoRoomForLegs,

    /// <summary>The pipe of the size given does not fill both its sockets, which take the limit given.</summary>
    SocketsNotFilled,

    /// <summary>The piece of the size given is longer than the pack takes, the limit given, and cannot be split further.</summary>
    PieceTooLong,
}
