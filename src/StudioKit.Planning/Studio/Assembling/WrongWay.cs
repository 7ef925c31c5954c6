using StudioKit.Physics;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>A mistake that a step invites.</summary>
/// <param name="Kind">What goes wrong.</param>
/// <param name="Joint">Label of the fitting that it happens at; none where it happens at none.</param>
/// <param name="Sockets">Where the fitting's sockets then point; empty where no fitting turns.</param>
public sealed record WrongWay(WrongWayKind Kind, string? Joint, ValueList<SocketDirection> Sockets);
