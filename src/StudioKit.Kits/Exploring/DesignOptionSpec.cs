using StudioKit.Physics;

namespace StudioKit.Kits.Exploring;

/// <summary>One way to settle a choice.</summary>
public sealed record DesignOptionSpec
{
    /// <summary>Its name in results.</summary>
    public required string Name { get; init; }

    /// <summary>What it writes.</summary>
    public ValueList<DesignWriting> Writes { get; init; } = [];

    /// <summary>Paths of keys and entries that it takes away.</summary>
    public ValueList<string> LeaveOut { get; init; } = [];

    /// <summary>What it costs beside the shopping list, in the stock's currency.</summary>
    public decimal Price { get; init; }
}
