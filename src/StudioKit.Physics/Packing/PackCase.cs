namespace StudioKit.Physics.Packing;

/// <summary>Everything to be carried, the bags and the people.</summary>
public sealed record PackCase
{
    /// <summary>Things to carry; names are unique.</summary>
    public required IReadOnlyList<CarriedItem> Items { get; init; }

    /// <summary>Bags; names are unique, at least one.</summary>
    public required IReadOnlyList<CarryingBag> Bags { get; init; }

    /// <summary>People; a bag whose carrier is not among them counts as carried by somebody of 70 kg.</summary>
    public IReadOnlyList<Carrier> Carriers { get; init; } = [];

    /// <summary>Share of body mass that a person is asked to carry at most [1]; above 0, at most 0.4.</summary>
    public double HighestShare { get; init; } = BodyShare.Comfortable;

    /// <summary>Share of a bag's volume that boxes of odd sizes fill [1]; above 0, at most 1.</summary>
    public double PackingFactor { get; init; } = 0.7;
}
