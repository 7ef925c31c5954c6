using StudioKit.Physics.Packing;
using StudioKit.Planning.Packing;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>What is carried and what it weighs.</summary>
public sealed record PackPlan
{
    /// <summary>Every line, in the order things are needed on site.</summary>
    public required IReadOnlyList<PackedItem> Items { get; init; }

    /// <summary>The bags; empty where the kit names none.</summary>
    public required IReadOnlyList<BagLoad> Bags { get; init; }

    /// <summary>What each person carries, over all their bags.</summary>
    public IReadOnlyList<PersonLoad> People { get; init; } = [];

    /// <summary>Everything together, bags included.</summary>
    public required Mass Total { get; init; }

    /// <summary>Part of the total, the bags left out, that was weighed.</summary>
    public Mass Weighed => Of(MassOrigin.Weighed);

    /// <summary>Part of it that comes from geometry and density.</summary>
    public Mass FromGeometry => Of(MassOrigin.FromGeometry);

    /// <summary>Part of it that is assumed.</summary>
    public Mass Assumed => Of(MassOrigin.Assumed);

    /// <summary>Cells of the flashes.</summary>
    public required IReadOnlyList<CellStock> Cells { get; init; }

    /// <summary>How the longest pipe and the panel travel; empty without bags.</summary>
    public IReadOnlyList<LongPiece> LongPieces { get; init; } = [];

    /// <summary>Whether no other sharing out loads the most loaded person or bag less; true where there is nothing to share out.</summary>
    public bool ProvenMostEven { get; init; } = true;

    /// <summary>Things that no bag takes.</summary>
    public IReadOnlyList<Misfit> Misfits { get; init; } = [];

    /// <summary>What to leave at home; none where nothing need stay.</summary>
    public LeaveAtHomePlan? LeaveAtHome { get; init; }

    /// <summary>Limits and advice, one sentence each.</summary>
    public IReadOnlyList<string> Notes => [.. Told.Select(note => note.Words)];

    /// <summary>The same before they are put into words.</summary>
    public IReadOnlyList<PackNote> Told { get; init; } = [];

    private Mass Of(MassOrigin origin) => Mass.FromGrams(Items.Where(item => item.Origin == origin).Sum(item => item.Mass.Grams));
}
