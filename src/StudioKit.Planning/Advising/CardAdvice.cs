using StudioKit.Physics;

namespace StudioKit.Planning.Advising;

/// <summary>All that is advised for one exposure; every piece of it is planned.</summary>
public sealed record CardAdvice
{
    /// <summary>Advice for an exposure that nothing is known of but itself, as one written by hand.</summary>
    public static CardAdvice None { get; } = new();

    /// <summary>What is seen, and what to turn.</summary>
    public ValueList<SymptomAdvice> Symptoms { get; init; } = [];

    /// <summary>What to set when the light changes, from brightest to darkest.</summary>
    public ValueList<LightStep> WhenLightChanges { get; init; } = [];

    /// <summary>Other distances of each flash.</summary>
    public ValueList<LightDistances> Distances { get; init; } = [];

    /// <summary>Changes that make it work, cheapest first; empty where it works, or where none was found.</summary>
    public ValueList<Advice> Mending { get; init; } = [];
}
