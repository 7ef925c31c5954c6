using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using UnitsNet;

namespace StudioKit.Planning.Cautions;

/// <summary>A caution that this plan gives cause for, with what it speaks of.</summary>
public sealed record PlanCaution
{
    /// <summary>What can hurt.</summary>
    public required CautionKind Kind { get; init; }

    /// <summary>The sheets that say it, once each.</summary>
    public required IReadOnlyList<CautionSheet> Sheets { get; init; }

    /// <summary>Groups of living things that give cause for it, whose handling cards say it; empty where no group does.</summary>
    public IReadOnlyList<SubjectGroup> Groups { get; init; } = [];

    /// <summary>Subjects that give cause for it.</summary>
    public IReadOnlyList<string> Subjects { get; init; } = [];

    /// <summary>The flashes that it warns of.</summary>
    public IReadOnlyList<FlashUnderSheet> Flashes { get; init; } = [];

    /// <summary>Material of the sheet; none where the caution is not about it.</summary>
    public string? Material { get; init; }

    /// <summary>What harms that sheet.</summary>
    public IReadOnlyList<SheetHarm> Harms { get; init; } = [];

    /// <summary>Whether the sheet is held bent, which makes it craze the sooner.</summary>
    public bool Bent { get; init; }

    /// <summary>Pegs in the ground [1].</summary>
    public int Pegs { get; init; }

    /// <summary>Whether cords run to the pegs.</summary>
    public bool Guys { get; init; }

    /// <summary>What is put up against sun and wind; empty where the caution is not about it.</summary>
    public IReadOnlyList<ShelterPlan> Shelters { get; init; } = [];

    /// <summary>Radio channels of the flashes; empty where the caution is not about them.</summary>
    public IReadOnlyList<int> Channels { get; init; } = [];

    /// <summary>The upright sheets that it warns of.</summary>
    public IReadOnlyList<UprightStandPlan> Uprights { get; init; } = [];

    /// <summary>Time in the field, all rounds together; none where the caution is not about it.</summary>
    public Duration? Day { get; init; }

    /// <summary>Warmth of the air; none where the caution is not about it.</summary>
    public Temperature? Air { get; init; }

    /// <summary>Keys of the sources in the bibliography, and the place in each; empty for common practice.</summary>
    public IReadOnlyList<(string Key, string Locator)> Sources { get; init; } = [];
}
