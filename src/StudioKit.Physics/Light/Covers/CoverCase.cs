using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>A clear cover over a subject that stands in its middle, or a tank of water around it.</summary>
/// <remarks>Places are counted from the subject's foot on the sheet: x to the camera's right, y away from it, z up.</remarks>
public sealed record CoverCase
{
    /// <summary>What it is like.</summary>
    public required CoverShape Shape { get; init; }

    /// <summary>Width inside; &gt; 0.</summary>
    public required Length Width { get; init; }

    /// <summary>Depth inside, away from the camera; as wide where it is round; &gt; 0.</summary>
    public required Length Depth { get; init; }

    /// <summary>Height inside; &gt; 0.</summary>
    public required Length Height { get; init; }

    /// <summary>Thickness of its walls; ≥ 0.</summary>
    public required Length Wall { get; init; }

    /// <summary>Refractive index of its walls [1]; ≥ 1.</summary>
    public required double RefractiveIndex { get; init; }

    /// <summary>Depth of the water in a tank; none in any other shape.</summary>
    public Length Water { get; init; } = Length.Zero;

    /// <summary>Whether there is water about the subject.</summary>
    public bool HoldsWater => Shape == CoverShape.Tank && Water > Length.Zero;

    /// <summary>Width over its walls.</summary>
    public Length OuterWidth => Width + (2 * Wall);

    /// <summary>Depth over its walls.</summary>
    public Length OuterDepth => Depth + (2 * Wall);

    /// <summary>Index of what is about the subject [1].</summary>
    internal double Inside => HoldsWater ? Covers.RefractiveIndex.Water : 1;
}
