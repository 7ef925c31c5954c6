using StudioKit.Kits;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Visits in order → steps with their times.</summary>
internal sealed class SessionTimeline(KitSpec kit)
{
    // Frames of a stack follow each other as fast as the flash recharges, but not faster than this (common practice, no source).
    private static readonly Duration StackFrame = Duration.FromSeconds(1);

    private readonly List<SessionStep> _steps = [];
    private (string SetUp, string Framing)? _place;

    /// <summary>All steps of a route.</summary>
    public IReadOnlyList<SessionStep> Of(SessionRoute route)
    {
        for (var i = 0; i < route.Visits.Count; i++)
        {
            var visit = route.Visits[i];
            var held = visit.Held && i > 0 && route.Visits[i - 1] is { Held: true } before && before.Subject == visit.Subject;
            GetReady(visit, held);
            if (visit.Held && !held)
            {
                Add(visit, SessionStepKind.Settling, $"Fetch the {visit.Subject.Name}; let it settle on the sheet.", kit.Session.Settling, held: true);
            }

            Shoot(visit);
            if (visit.Held && (i == route.Visits.Count - 1 || route.Visits[i + 1].Subject != visit.Subject))
            {
                Add(visit, SessionStepKind.Releasing, $"Let the {visit.Subject.Name} go where it was found.", Duration.Zero);
            }
        }

        return _steps;
    }

    // The test object takes the animal's place first, so that the animal waits where it lives.
    private void GetReady(SessionVisit visit, bool held)
    {
        if (_place == visit.Place)
        {
            return;
        }

        var (kind, what, time) = _place switch
        {
            null => (SessionStepKind.SettingUp, $"Set up for {visit.Exposure.SetUp}, {visit.Exposure.Framing.Name}.", kit.Session.SettingUp),
            var place when place.Value.SetUp != visit.Exposure.SetUp =>
                (SessionStepKind.Changing, $"Change to {visit.Exposure.SetUp}, {visit.Exposure.Framing.Name}{Waiting(visit, held)}.", kit.Session.Changing),
            _ => (SessionStepKind.Reframing, $"Change to {visit.Exposure.Framing.Name}{Waiting(visit, held)}.", kit.Session.Reframing),
        };
        _place = visit.Place;
        Add(visit, kind, what, time, held);
        Add(
            visit, SessionStepKind.Testing, $"Test object first: a twig {PlanFormat.Millimetres(visit.Subject.Length)} long.",
            kit.Session.TestFrames * FrameTime(visit, kit.Session.FrameTime), held, kit.Session.TestFrames);
        _steps[^1] = _steps[^1] with { Tests = visit.Exposure.TestSteps };
    }

    private static string Waiting(SessionVisit visit, bool held) => held ? $"; the {visit.Subject.Name} waits in its tub in the shade" : "";

    private void Shoot(SessionVisit visit)
    {
        var frames = visit.Subject.Frames ?? kit.Session.Frames;
        var stack = StackFrames(visit);
        var stacked = stack > 0 ? FormattableString.Invariant($", then a focus stack of {stack}") : "";
        var where = visit.WhereItSits ? " where it sits" : "";
        Add(
            visit, SessionStepKind.Shooting, FormattableString.Invariant($"Photograph the {visit.Subject.Name}{where}: {frames} frames{stacked}."),
            (frames * FrameTime(visit, kit.Session.FrameTime)) + (stack * FrameTime(visit, StackFrame)), visit.Held, frames + stack);
    }

    private static int StackFrames(SessionVisit visit)
    {
        if (!visit.Subject.Stack)
        {
            return 0;
        }

        var stack = FocusStack.Plan(new FocusStackCase
        {
            Depth = SharpnessPlanner.DepthOf(visit.Subject),
            DepthOfField = visit.Exposure.Sharpness.DepthOfField,
        });
        return stack.Frames > 1 ? stack.Frames : 0;
    }

    // No frame sooner than the slowest flash is ready again.
    private static Duration FrameTime(SessionVisit visit, Duration least) =>
        visit.Exposure.Lights.Select(light => light.RecycleTime).Append(least).Max();

    private void Add(SessionVisit visit, SessionStepKind kind, string what, Duration time, bool held = false, int frames = 0) => _steps.Add(new SessionStep
    {
        Kind = kind,
        What = what,
        Subject = visit.Subject.Name,
        SetUp = visit.Exposure.SetUp,
        Framing = visit.Exposure.Framing.Name,
        Time = time,
        Frames = frames,
        Flashes = frames * visit.Exposure.Lights.Count,
        Held = held,
    });
}
