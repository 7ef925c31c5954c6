using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Light.Covers;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Visits in order → rounds of steps with their times; where one round ends, the next begins.</summary>
internal sealed class SessionTimeline(KitSpec kit)
{
    // Frames of a stack follow each other as fast as the flash recharges, but not faster than this (common practice, no source).
    private static readonly Duration StackFrame = Duration.FromSeconds(1);

    private readonly List<SessionStep> _steps = [];
    private readonly Dictionary<string, FiringPlan> _fired = new(StringComparer.Ordinal);
    private ValueList<ShelterPlan> _shelters = [];
    private (string SetUp, string Framing)? _place;
    private (string SetUp, string? Subject)? _sheet;

    /// <summary>The next round.</summary>
    public SessionRound Round(SessionRoute route)
    {
        _steps.Clear();
        for (var i = 0; i < route.Visits.Count; i++)
        {
            var visit = route.Visits[i];
            var held = i > 0 && StaysInHand(route.Visits[i - 1], visit);
            GetReady(visit, held);
            if (visit.Held && !held)
            {
                Add(visit, SessionStepKind.Settling, Settling(visit), held: true);
            }

            Shoot(visit);
            if (visit.Held && (i == route.Visits.Count - 1 || !StaysInHand(visit, route.Visits[i + 1])))
            {
                Add(visit, SessionStepKind.Releasing, Duration.Zero);
            }
        }

        return new SessionRound([.. _steps]);
    }

    // A polariser is turned before an animal is fetched, so none waits in a tub while that is done.
    private static bool StaysInHand(SessionVisit before, SessionVisit after) =>
        before.Held && after.Held && before.Subject == after.Subject && (before.Place == after.Place || !after.TurnsPolariser);

    // The test object takes the animal's place first, so that the animal waits where it lives.
    private void GetReady(SessionVisit visit, bool held)
    {
        if (_place == visit.Place)
        {
            StandSheet(visit, held);
            return;
        }

        var (kind, time) = _place switch
        {
            null => (SessionStepKind.SettingUp, kit.Session.SettingUp),
            var place when place.Value.SetUp != visit.Exposure.SetUp => (SessionStepKind.Changing, kit.Session.Changing),
            _ => (SessionStepKind.Reframing, kit.Session.Reframing),
        };
        _place = visit.Place;
        Add(visit, kind, time, held);
        Shelter(visit, held);
        StandSheet(visit, held);
        SetTriggers(visit, held);
        if (visit.TurnsPolariser)
        {
            Add(visit, SessionStepKind.TurningPolariser, Duration.Zero);
        }

        Add(visit, SessionStepKind.Testing, kit.Session.TestFrames * FrameTime(visit, kit.Session.FrameTime), held, kit.Session.TestFrames);
        _steps[^1] = _steps[^1] with { Tests = [.. visit.Exposure.TestSteps.Where(test => test != TestStep.TurnPolariser)] };
    }

    // What stands may stay; the time is that of setting up and changing.
    private void Shelter(SessionVisit visit, bool held)
    {
        var (before, now) = (_shelters, visit.Exposure.Shelters);
        _shelters = now;
        ValueList<ShelterPlan> up = [.. now.Where(shelter => !before.Contains(shelter))];
        ValueList<string> down = [.. before.Select(shelter => shelter.Name).Where(name => now.All(shelter => shelter.Name != name))];
        if (up.Count + down.Count > 0)
        {
            Add(visit, SessionStepKind.Sheltering, Duration.Zero, held);
            _steps[^1] = _steps[^1] with { PutUp = up, TakenDown = down };
        }
    }

    // Only what is not so already; the time is that of setting up and changing.
    private void SetTriggers(SessionVisit visit, bool held)
    {
        ValueList<FlashFiring> changed = [.. visit.Exposure.Lights
            .Where(light => light.FiredBy is { } firing && _fired.GetValueOrDefault(light.Flash) != firing)
            .Select(light => new FlashFiring(light.Flash, light.Role, light.FiredBy!))];
        if (changed.Count == 0)
        {
            return;
        }

        foreach (var flash in changed)
        {
            _fired[flash.Flash] = flash.FiredBy;
        }

        Add(visit, SessionStepKind.SettingTriggers, Duration.Zero, held);
        _steps[^1] = _steps[^1] with { Fired = changed };
    }

    // Where subjects grow, the sheet goes up behind each; the time of the change before is for the first of them, and each of the others is another change.
    private void StandSheet(SessionVisit visit, bool held)
    {
        if (SetUpOf(visit) is not { Upright: { } name } setUp)
        {
            return;
        }

        var stands = (setUp.Name, setUp.IsBeforeUpright ? visit.Subject.Name : null);
        if (_sheet != stands)
        {
            var moved = _sheet is { } before && before.SetUp == setUp.Name;
            Add(visit, SessionStepKind.StandingSheet, moved ? kit.Session.Changing : Duration.Zero, held);
            _steps[^1] = _steps[^1] with { Upright = new SessionUpright(name, setUp.BackgroundDistance, setUp.IsBeforeUpright) };
            _sheet = stands;
        }
    }

    // An animal settles under its cover, and no longer than that allows.
    private Duration Settling(SessionVisit visit) => CoverStays.Of(kit, SetUpOf(visit)) is { } stay && stay.Limit < kit.Session.Settling ? stay.Limit : kit.Session.Settling;

    private SetUpSpec SetUpOf(SessionVisit visit) => kit.SetUps.First(setUp => setUp.Name == visit.Exposure.SetUp);

    private void Shoot(SessionVisit visit)
    {
        var frames = visit.Subject.Frames ?? kit.Session.Frames;
        var stack = StackFrames(visit);
        var time = (frames * FrameTime(visit, kit.Session.FrameTime)) + (stack * FrameTime(visit, StackFrame));
        Add(visit, SessionStepKind.Shooting, time, visit.Held, frames + stack);
        _steps[^1] = _steps[^1] with { StackFrames = stack };
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

    private void Add(SessionVisit visit, SessionStepKind kind, Duration time, bool held = false, int frames = 0) => _steps.Add(new SessionStep
    {
        Kind = kind,
        Subject = visit.Subject.Name,
        SubjectLength = visit.Subject.Length,
        SetUp = visit.Exposure.SetUp,
        Framing = visit.Exposure.Framing.Name,
        Time = time,
        Frames = frames,
        Flashes = frames * visit.Exposure.Lights.Count,
        Held = held,
        OnPanel = visit.Exposure.OnPanel,
        WhereItSits = visit.WhereItSits,
        Cover = kit.CoverOf(SetUpOf(visit)) is { } cover ? new SessionCover(cover.Name, cover.Shape == CoverShape.Tank, cover.Lifted) : null,
    });
}
