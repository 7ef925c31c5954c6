using StudioKit.Physics;

namespace StudioKit.Planning.Studio.Assembling;

/// <summary>Pieces and fittings in one straight line, in the order in which they go together.</summary>
/// <param name="Towards">Where the line runs, from its first part to its last: down, to the back or to the right.</param>
/// <param name="Parts">Labels of its fittings and pieces by turns, a fitting first and last.</param>
public sealed record PartRun(SocketDirection Towards, ValueList<string> Parts);
