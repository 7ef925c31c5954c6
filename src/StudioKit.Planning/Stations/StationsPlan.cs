using StudioKit.Physics;

namespace StudioKit.Planning.Stations;

/// <summary>What several studios that are built and used side by side can share, and where they get into each other's way.</summary>
public sealed record StationsPlan
{
    /// <summary>The stations, by the names of their kits; one that is named twice is built twice.</summary>
    public required ValueList<string> Stations { get; init; }

    /// <summary>Pipe and sheets that more than one station is cut from, bought together against each for itself.</summary>
    public required ValueList<CutTogether> Cuts { get; init; }

    /// <summary>Tools that more than one station needs; one does for all who take turns.</summary>
    public required ValueList<SharedTool> Tools { get; init; }

    /// <summary>Pieces that are the same in more than one station, so that a spare fits them all.</summary>
    public required ValueList<AlikePiece> Alike { get; init; }

    /// <summary>Radio channels that more than one station uses: who fires one fires the other.</summary>
    public required ValueList<ChannelClash> Channels { get; init; }

    /// <summary>What buying together saves where prices are in one currency; none where they are not, or where a price is not known.</summary>
    public decimal? Saved => Currency is null || Cuts.Any(cut => cut.Apart.Cost is null || cut.Together.Cost is null) ? null : Cuts.Sum(cut => cut.Apart.Cost!.Value - cut.Together.Cost!.Value);

    /// <summary>Currency of all stations; none where they have several.</summary>
    public required string? Currency { get; init; }
}
