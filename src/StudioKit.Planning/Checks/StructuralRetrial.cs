using StudioKit.Kits;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Frames;

namespace StudioKit.Planning.Checks;

/// <summary>Plans panel and frame of a changed kit again, to see whether a structural check then passes.</summary>
internal sealed class StructuralRetrial(KitSpec kit, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<StructuralCheck> before, int problems)
{
    private readonly HashSet<StructuralCheckKind> _failing = [.. before.Where(check => !check.Holds).Select(check => check.Kind)];

    /// <summary>The first change that makes the check pass and no other fail, else the first that makes it pass; none where none does.</summary>
    public StructuralChange? For(StructuralCheck check)
    {
        StructuralChange? passing = null;
        foreach (var change in StructuralTrials.For(check, kit))
        {
            if (After(change) is { } after && Passes(after, check.Kind))
            {
                if (after.All(found => found.Holds || _failing.Contains(found.Kind)))
                {
                    return change;
                }

                passing ??= change;
            }
        }

        return passing;
    }

    // Cords that hold the top take the place of the sway.
    private static bool Passes(IReadOnlyList<StructuralCheck> after, StructuralCheckKind kind) =>
        after.All(found => found.Holds || (found.Kind != kind && !(kind == StructuralCheckKind.Sway && found.Kind == StructuralCheckKind.Cords)));

    private IReadOnlyList<StructuralCheck>? After(StructuralChange change)
    {
        var changed = change.Of(kit);
        var panel = PlanStages.Panel(changed, framings);
        if (FramePlanner.Obstacle(changed, panel) is not null)
        {
            return null;
        }

        var (_, frame) = FramePlanner.Generate(changed, panel);
        var standing = FrameLoads.StandingMass(changed, panel, frame, SheetParts.Of(changed, panel, frame, []));
        return frame.Problems.Count > problems ? null : StudioChecks.All(FrameLoads.CaseOf(changed, panel, frame, standing));
    }
}
