namespace StudioKit.Planning.Studio.Assembling;

/// <summary>A socket that is still empty when a step is done.</summary>
/// <param name="Joint">Label of its fitting.</param>
/// <param name="Direction">Where it points.</param>
/// <param name="Later">Label of the piece that a later step pushes into it; none for the socket that takes a flash.</param>
public sealed record FreeSocket(string Joint, SocketDirection Direction, string? Later);
