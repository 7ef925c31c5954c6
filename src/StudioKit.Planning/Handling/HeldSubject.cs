using UnitsNet;

namespace StudioKit.Planning.Handling;

/// <summary>A subject and the most time it is held.</summary>
/// <param name="Name">Name of the subject.</param>
/// <param name="HoldLimit">Most time it is held; none where it is not held at all.</param>
public sealed record HeldSubject(string Name, Duration? HoldLimit);
