using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>A thing carried; several of a kind travel together.</summary>
public sealed record CarriedItem
{
    /// <summary>Name; unique in the pack.</summary>
    public required string Name { get; init; }

    /// <summary>Mass of one; ≥ 0.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Where its mass comes from.</summary>
    public MassOrigin Origin { get; init; } = MassOrigin.Weighed;

    /// <summary>How many [1]; ≥ 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Outside of one, longest side first; none where it was not given.</summary>
    public BoxSize? Size { get; init; }

    /// <summary>Bag that it must go in; free where none is given.</summary>
    public string? Bag { get; init; }

    /// <summary>When it is needed, counted from what is needed first [1].</summary>
    public int NeededAt { get; init; }

    /// <summary>Whether it breaks easily.</summary>
    public bool Fragile { get; init; }

    /// <summary>Whether the day cannot do without it.</summary>
    public bool Essential { get; init; } = true;

    /// <summary>What is lost when it stays at home, besides the framings and set-ups that need it [1]; ≥ 0.</summary>
    public double Loss { get; init; }

    /// <summary>Mass of all of them.</summary>
    public Mass TotalMass => Count * Mass;
}
