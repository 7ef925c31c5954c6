using StudioKit.Planning.Changes;
namespace StudioKit.Planning.Checks;

/// <summary>What would make a check pass.</summary>
/// <param name="Kind">What to do.</param>
public sealed record CheckRemedy(CheckRemedyKind Kind)
{
    /// <summary>How much of it; unmeasured where it is not a matter of how much.</summary>
    public CheckAmount Amount { get; init; } = CheckAmount.Unmeasured;

    /// <summary>Names of what it is done to, where that is not what the check is about.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>The change of the kit that was tried and made the check pass; none where nothing was tried.</summary>
    public StructuralChange? Change { get; init; }

    /// <summary>How an upright sheet is held otherwise; none for all else.</summary>
    public KitChange.Restand? Restand { get; init; }

    /// <summary>What to change and to leave at home; none for all but the mass asked for.</summary>
    public Packing.LeaveAtHomePlan? Home { get; init; }

    /// <summary>Keys of the kit to change, as a path of sections; a section that is a list stands for the part concerned.</summary>
    public IReadOnlyList<string> Keys { get; init; } = [];
}
