using StudioKit.Kits;
using StudioKit.Kits.Uprights;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Frames;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.Checks;

/// <summary>Plans panel and frame of a changed kit again, to see whether a structural check then passes.</summary>
internal sealed class StructuralRetrial(KitSpec kit, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<StructuralCheck> before, int problems)
{
    private readonly HashSet<StructuralCheckKind> _failing = [.. before.Where(check => !check.Holds).Select(check => check.Kind)];

    // One change may be tried for several checks.
    private readonly Dictionary<StructuralChange, IReadOnlyList<StructuralCheck>?> _tried = [];

    /// <summary>The first change that makes the check pass and no other fail, else the first that makes it pass; none where none does.</summary>
    public StructuralChange? For(StructuralCheck check)
    {
        var changes = StructuralTrials.For(check, kit).ToList();
        var pushes = StructuralTrials.Pushes(check, kit);
        return changes.Find(change => Mends(change, check.Kind))
            ?? First(pushes, push => Mends(push, check.Kind))
            ?? changes.Find(change => Passes(change, check.Kind))
            ?? First(pushes, push => Passes(push, check.Kind));
    }

    // A lighter push holds wherever a harder one does, so the hardest that holds is found by halving.
    private static StructuralChange? First(IReadOnlyList<StructuralChange> hardestFirst, Func<StructuralChange, bool> holds)
    {
        var (first, beyond) = (0, hardestFirst.Count);
        while (first < beyond)
        {
            var middle = (first + beyond) / 2;
            (first, beyond) = holds(hardestFirst[middle]) ? (first, middle) : (middle + 1, beyond);
        }

        return first < hardestFirst.Count ? hardestFirst[first] : null;
    }

    private bool Mends(StructuralChange change, StructuralCheckKind kind) =>
        Passes(change, kind) && After(change)!.All(found => found.Holds || _failing.Contains(found.Kind));

    private bool Passes(StructuralChange change, StructuralCheckKind kind) => After(change) is { } after && Passes(after, kind);

    // Cords that hold the top take the place of the sway.
    private static bool Passes(IReadOnlyList<StructuralCheck> after, StructuralCheckKind kind) =>
        after.All(found => found.Holds || (found.Kind != kind && !(kind == StructuralCheckKind.Sway && found.Kind == StructuralCheckKind.Cords)));

    /// <summary>The checks of a kit's panel and frame and how many problems the frame has; none where no frame can be drawn.</summary>
    public static (IReadOnlyList<StructuralCheck> Checks, int Problems)? Again(KitSpec kit, IReadOnlyList<PlannedFraming> framings)
    {
        var panel = PlanStages.Panel(kit, framings);
        if (FramePlanner.Obstacle(kit, panel) is not null)
        {
            return null;
        }

        var (_, frame) = FramePlanner.Geometry(kit, panel);
        var standing = FrameLoads.StandingMass(kit, panel, frame, SheetParts.Of(kit, panel, frame, []));
        var sail = kit.Uprights.Any(upright => upright.Carrier == UprightCarrier.Frame)
            ? FrameSails.Of(UprightStandPlanner.Of(kit, PlanStages.Uprights(kit, framings), frame))
            : null;
        return (StudioChecks.All(FrameLoads.WithSail(FrameLoads.CaseOf(kit, panel, frame, standing), kit, panel, sail)), frame.Problems.Count);
    }

    private IReadOnlyList<StructuralCheck>? After(StructuralChange change)
    {
        if (!_tried.TryGetValue(change, out var after))
        {
            after = Again(change.Of(kit), framings) is var (checks, found) && found <= problems ? checks : null;
            _tried.Add(change, after);
        }

        return after;
    }
}
