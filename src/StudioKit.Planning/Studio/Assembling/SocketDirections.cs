using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>Sockets' directions as vectors and back; a frame's pipes all run along its three axes.</summary>
public static class SocketDirections
{
    /// <summary>The direction that a vector points most in.</summary>
    /// <param name="vector">The vector, not nought.</param>
    public static SocketDirection Of(FramePoint vector)
    {
        var (right, back, up) = (Math.Abs(vector.Right), Math.Abs(vector.Back), Math.Abs(vector.Up));
        return right >= back && right >= up ? (vector.Right < 0 ? SocketDirection.Left : SocketDirection.Right)
            : back >= up ? (vector.Back < 0 ? SocketDirection.Front : SocketDirection.Back)
            : vector.Up < 0 ? SocketDirection.Down : SocketDirection.Up;
    }

    /// <summary>The unit vector of a direction.</summary>
    /// <param name="direction">The direction.</param>
    /// <exception cref="ArgumentOutOfRangeException">The direction is none.</exception>
    public static FramePoint Vector(SocketDirection direction) => direction switch
    {
        SocketDirection.Left => new FramePoint(-1, 0, 0),
        SocketDirection.Right => new FramePoint(1, 0, 0),
        SocketDirection.Front => new FramePoint(0, -1, 0),
        SocketDirection.Back => new FramePoint(0, 1, 0),
        SocketDirection.Up => new FramePoint(0, 0, 1),
        SocketDirection.Down => new FramePoint(0, 0, -1),
        _ => throw new ArgumentOutOfRangeException(nameof(direction), direction, "No direction."),
    };
}
