using UnitsNet;

namespace StudioKit.Kits.Lighting;

/// <summary>A stand, arm or clamp that holds a flash, or a hand that does.</summary>
public sealed record HolderSpec
{
    /// <summary>Name on the sheets; unique among the holders.</summary>
    public required string Name { get; init; }

    /// <summary>What it is.</summary>
    public required HolderKind Kind { get; init; }

    /// <summary>Lowest that it holds the flash over the ground; usual for its kind where the kit gives none.</summary>
    public Length? Lowest { get; init; }

    /// <summary>Highest that it holds the flash over the ground; usual for its kind where the kit gives none.</summary>
    public Length? Highest { get; init; }

    /// <summary>From where it is fastened, or from the hand's camera, to the flash; for a stand the boom at its top. Usual for its kind where the kit gives none.</summary>
    public Length? Reach { get; init; }

    /// <summary>Whether it is built of the frame's pipe rather than bought.</summary>
    public bool Built { get; init; }

    /// <summary>Price of one that is bought; none where the kit gives none.</summary>
    public decimal? Price { get; init; }

    /// <summary>Longest side as it is packed; with <see cref="PackedWidth"/> and <see cref="PackedDepth"/> the file's <c>size: 500 mm x 90 mm x 90 mm</c>.</summary>
    public Length? PackedLength { get; init; }

    /// <summary>Second side as it is packed.</summary>
    public Length? PackedWidth { get; init; }

    /// <summary>Third side as it is packed.</summary>
    public Length? PackedDepth { get; init; }

    /// <summary>Mass; none where it was not given.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Lowest that it holds a flash, given or usual.</summary>
    public Length LowestHold => Lowest ?? UsualHolders.Lowest(Kind);

    /// <summary>Highest that it holds a flash, given or usual.</summary>
    public Length HighestHold => Highest ?? UsualHolders.Highest(Kind);

    /// <summary>How far it reaches, given or usual.</summary>
    public Length FullReach => Reach ?? UsualHolders.Reach(Kind);

    /// <summary>Whether its height over the ground is its own, and not that of what it is fastened to.</summary>
    public bool StandsOnGround => Kind is HolderKind.Stand or HolderKind.Ground;

    /// <summary>Whether it is a thing that is packed.</summary>
    public bool IsCarried => Kind != HolderKind.Hand;
}
