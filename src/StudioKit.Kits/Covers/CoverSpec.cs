using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Kits.Covers;

/// <summary>A clear tub or dome that is turned over an animal, or a tank of water that it swims in.</summary>
public sealed record CoverSpec
{
    // Beneath its rim, so that nothing spills (common practice, no source).
    private static readonly Length UsualRim = Length.FromMillimeters(10);

    // How long an animal sits in still air, or in water that does not flow (common practice, no source).
    private static readonly Duration UsualInAir = Duration.FromMinutes(5);
    private static readonly Duration UsualInWater = Duration.FromMinutes(15);

    /// <summary>Name on the sheets; unique among the covers.</summary>
    public required string Name { get; init; }

    /// <summary>What it is like.</summary>
    public required CoverShape Shape { get; init; }

    /// <summary>Width inside; with the next two the file's <c>inside: 120 mm x 100 mm x 60 mm</c>.</summary>
    public required Length Width { get; init; }

    /// <summary>Depth inside, away from the camera; as wide where it is round.</summary>
    public required Length Depth { get; init; }

    /// <summary>Height inside.</summary>
    public required Length Height { get; init; }

    /// <summary>Thickness of its walls.</summary>
    public Length Wall { get; init; } = Length.FromMillimeters(2);

    /// <summary>What it is made of.</summary>
    public ClearMaterial Material { get; init; } = ClearMaterial.Acrylic;

    /// <summary>Depth of the water in a tank; up to a finger's breadth under its rim where the kit gives none.</summary>
    public Length? Water { get; init; }

    /// <summary>Whether it is lifted for the picture, so that nothing is photographed through it.</summary>
    public bool Lifted { get; init; }

    /// <summary>Most time that an animal stays in it; what is usual in air or in water where the kit gives none.</summary>
    public Duration? TimeLimit { get; init; }

    /// <summary>Mass without water; from its walls where it was not given.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Price where it is to be bought; on hand where the kit gives none.</summary>
    public decimal? Price { get; init; }

    /// <summary>Longest side as it is packed; as it is where the kit gives none.</summary>
    public Length? PackedLength { get; init; }

    /// <summary>Second side.</summary>
    public Length? PackedWidth { get; init; }

    /// <summary>Third side.</summary>
    public Length? PackedDepth { get; init; }

    /// <summary>Depth of the water, given or usual; none but in a tank.</summary>
    public Length WaterDepth => Shape != CoverShape.Tank ? Length.Zero : Water ?? UnitMath.Max(Height / 2, Height - UsualRim);

    /// <summary>Most time that an animal stays in it, given or usual.</summary>
    public Duration LongestStay => TimeLimit ?? (Shape == CoverShape.Tank ? UsualInWater : UsualInAir);

    /// <summary>As light meets it.</summary>
    public CoverCase Case => new()
    {
        Shape = Shape,
        Width = Width,
        Depth = Depth,
        Height = Height,
        Wall = Wall,
        RefractiveIndex = RefractiveIndex.Of(Material),
        Water = WaterDepth,
    };
}
