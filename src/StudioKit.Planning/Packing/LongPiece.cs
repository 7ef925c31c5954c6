using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>The longest pipe or the panel, and how it travels.</summary>
public sealed record LongPiece
{
    /// <summary>What it is.</summary>
    public required string Name { get; init; }

    /// <summary>The part of the studio that it is, or belongs to.</summary>
    public required StudioPart Part { get; init; }

    /// <summary>Its length.</summary>
    public required Length Length { get; init; }

    /// <summary>Bag that carries it.</summary>
    public required string Bag { get; init; }

    /// <summary>Where on it.</summary>
    public required LongItemPlacement Placement { get; init; }

    /// <summary>Longest that would go inside.</summary>
    public required Length LongestInside { get; init; }

    /// <summary>Whether it is longer than the bag by so much that it catches on things.</summary>
    public required bool SticksOut { get; init; }

    /// <summary>What to mind; empty where it rides well.</summary>
    public IReadOnlyList<LongPieceCaveat> Caveats { get; init; } = [];
}
