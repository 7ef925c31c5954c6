namespace StudioKit.Physics.Structure.Frames;

/// <summary>One socket of a fitting in its place.</summary>
/// <param name="Direction">Unit vector out of the socket [1].</param>
/// <param name="Member">Label of the pipe in it; none for the open socket that carries the flash.</param>
public sealed record FramePort(FramePoint Direction, string? Member);
