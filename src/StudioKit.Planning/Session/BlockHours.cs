using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>When a block's rounds can be gone through on the day: its light is there, its hours allow it, and its subjects are about.</summary>
public sealed record BlockHours
{
    /// <summary>Every stretch of the day, by sky and start.</summary>
    public required ValueList<LightTime> Times { get; init; }

    /// <summary>The stretch that all rounds fall into, after the blocks before it; none where they fit in none.</summary>
    public LightTime? Chosen { get; init; }

    /// <summary>Earliest begin, minutes from midnight of the date [1]; none where the rounds fit nowhere.</summary>
    public int? EarliestBegin { get; init; }

    /// <summary>Latest begin that leaves time for the blocks after it [1]; none where the rounds fit nowhere.</summary>
    public int? LatestBegin { get; init; }

    /// <summary>Longest time that is free for its rounds.</summary>
    public required Duration Room { get; init; }

    /// <summary>How many rounds fit into that time [1].</summary>
    public required int RoundsThatFit { get; init; }

    /// <summary>Its times if its hours by the clock were left out; empty where it has none, or where that would help nothing.</summary>
    public ValueList<LightTime> WithoutClock { get; init; } = [];

    /// <summary>Its times if its subjects were about all day; empty where they are, or where that would help nothing.</summary>
    public ValueList<LightTime> WithoutActivity { get; init; } = [];

    /// <summary>From the darkest to the brightest light expected while hours and subjects allow it; none where the sun is not looked at, or nothing is allowed.</summary>
    public LightRange? Expected { get; init; }
}
