using StudioKit.Physics;
using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Stations.OneWhite;

/// <summary>Several stations brought to one white margin.</summary>
public sealed record CommonWhite
{
    /// <summary>The margin that all are to have.</summary>
    public required Stops Margin { get; init; }

    /// <summary>Where it comes from.</summary>
    public required CommonMargin Basis { get; init; }

    /// <summary>How far from it is still one white.</summary>
    public required Stops Tolerance { get; init; }

    /// <summary>The stations, in the order given.</summary>
    public required ValueList<StationWhite> Stations { get; init; }

    /// <summary>How far apart they lie as their cards are set.</summary>
    public required WhiteSpread Before { get; init; }

    /// <summary>How far apart those lie that can be made white, once that is done; none where there is no such station.</summary>
    public WhiteSpread? After { get; init; }

    /// <summary>Whether every station is shown to lie within the tolerance.</summary>
    public bool IsOneWhite => Stations.All(station => station.Decision == ConformityDecision.Within);
}
