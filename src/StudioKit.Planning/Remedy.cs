namespace StudioKit.Planning;

/// <summary>If this is seen on the test frame, turn that.</summary>
/// <param name="Seen">What the frame shows.</param>
/// <param name="Turn">What to turn and by how much.</param>
public sealed record Remedy(string Seen, string Turn);
