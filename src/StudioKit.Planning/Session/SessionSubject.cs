using StudioKit.Kits.Subjects;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>A subject in a session and how long it is held.</summary>
public sealed record SessionSubject
{
    /// <summary>Name of the subject.</summary>
    public required string Name { get; init; }

    /// <summary>Its group.</summary>
    public required SubjectGroup Group { get; init; }

    /// <summary>Longest that one of them is held, from fetching it to letting it go; nought where it stays in its place.</summary>
    public required Duration HoldTime { get; init; }

    /// <summary>Most time it may be held; none where it is not held at all.</summary>
    public Duration? HoldLimit { get; init; }

    /// <summary>Whether the limit holds.</summary>
    public bool WithinLimit => HoldLimit is not { } limit || HoldTime <= limit;
}
