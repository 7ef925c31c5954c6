using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>What stops a frame being built or packed.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Size">The length that there is.</param>
/// <param name="Limit">The length that it has to reach, or must not pass, by the kind.</param>
public sealed record FrameProblem(FrameProblemKind Kind, Length Size, Length Limit)
{
    /// <summary>The pipe that it concerns; none where it concerns the whole frame.</summary>
    public FrameMember? Member { get; init; }
}
