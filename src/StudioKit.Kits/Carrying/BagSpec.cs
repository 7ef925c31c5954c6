using UnitsNet;

namespace StudioKit.Kits.Carrying;

/// <summary>A bag or backpack.</summary>
public sealed record BagSpec
{
    /// <summary>Name on the pack list; unique among the bags.</summary>
    public required string Name { get; init; }

    /// <summary>Inside length; with the next two the file's <c>inside: 600 mm x 300 mm x 220 mm</c>.</summary>
    public required Length InsideLength { get; init; }

    /// <summary>Inside width.</summary>
    public required Length InsideWidth { get; init; }

    /// <summary>Inside depth.</summary>
    public required Length InsideDepth { get; init; }

    /// <summary>Mass of the empty bag.</summary>
    public Mass Mass { get; init; } = Mass.FromGrams(1500);

    /// <summary>Greatest load with the bag's own mass; none where it was not given.</summary>
    public Mass? HighestLoad { get; init; }

    /// <summary>Name of the person who carries it; none where it was not given.</summary>
    public string? Carrier { get; init; }
}
