using UnitsNet;

namespace StudioKit.Kits.Studio;

/// <summary>Pegs that hold the feet to the ground.</summary>
public sealed record PegsSpec
{
    /// <summary>How many there are, spread evenly over the feet [1].</summary>
    public int Count { get; init; }

    /// <summary>Whether they hold cords at 45° from the top corners instead of the feet.</summary>
    public bool Guys { get; init; }

    /// <summary>What one holds, as a spring balance reads when it pulls the peg out of the ground of the place.</summary>
    public Mass Hold { get; init; } = Mass.Zero;
}
