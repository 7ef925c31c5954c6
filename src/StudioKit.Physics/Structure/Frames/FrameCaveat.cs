using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>What the builder of a frame should know.</summary>
/// <param name="Kind">What to know.</param>
public sealed record FrameCaveat(FrameCaveatKind Kind)
{
    /// <summary>The length that the kind is about; none where it is about none.</summary>
    public Length? Size { get; init; }

    /// <summary>The length that was asked for, or that there is; none where the kind compares nothing.</summary>
    public Length? Against { get; init; }
}
