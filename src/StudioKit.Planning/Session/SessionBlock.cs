using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>Set-ups that are photographed in one light, round after round.</summary>
public sealed record SessionBlock
{
    /// <summary>The set-ups in the order of the kit, each with its window.</summary>
    public required ValueList<SetUpWindow> SetUps { get; init; }

    /// <summary>Names of its subjects, where others of its set-ups are about at other hours and have a block of their own; else empty.</summary>
    public ValueList<string> Only { get; init; } = [];

    /// <summary>From the darkest to the brightest light that one of its set-ups is planned for; all work in it.</summary>
    public required LightRange Planned { get; init; }

    /// <summary>Ambient light in which all of its set-ups work.</summary>
    public required LightRange Light { get; init; }

    /// <summary>Hours of the day that all of its set-ups allow; any where none of them names hours.</summary>
    public ClockRange? Clock { get; init; }

    /// <summary>When it can be gone through on the day; none where neither a date with a place nor hours of its subjects are known.</summary>
    public BlockHours? Hours { get; init; }

    /// <summary>The first round, with setting up or changing to its first set-up.</summary>
    public required SessionRound First { get; init; }

    /// <summary>Each following round, from where the one before it ended; none where there is one only.</summary>
    public SessionRound? Following { get; init; }

    /// <summary>How often it is gone through with new animals [1].</summary>
    public required int Rounds { get; init; }

    /// <summary>How long all rounds take.</summary>
    public Duration Time => First.Time + ((Rounds - 1) * (Following?.Time ?? Duration.Zero));

    /// <summary>Frames of all rounds [1].</summary>
    public int Frames => First.Frames + ((Rounds - 1) * (Following?.Frames ?? 0));

    /// <summary>Flashes of all rounds, every head counted [1].</summary>
    public int Flashes => First.Flashes + ((Rounds - 1) * (Following?.Flashes ?? 0));

    /// <summary>The steps that open the first round, those that open the following ones in their place, and those that both go on with.</summary>
    public IEnumerable<(RoundPart Part, SessionStep Step)> Parts
    {
        get
        {
            IReadOnlyList<SessionStep> following = Following is { } later ? later.Steps : First.Steps;
            var same = First.Steps.Reverse().Zip(following.Reverse()).TakeWhile(pair => pair.First == pair.Second).Count();
            return First.Steps.SkipLast(same).Select(step => (RoundPart.First, step))
                .Concat(following.SkipLast(same).Select(step => (RoundPart.Following, step)))
                .Concat(First.Steps.TakeLast(same).Select(step => (RoundPart.Every, step)));
        }
    }

    /// <summary>Every step of every round's kind, with how often it is done [1].</summary>
    internal IEnumerable<(SessionStep Step, int Times)> Counted =>
        First.Steps.Select(step => (step, 1)).Concat((Following?.Steps ?? []).Select(step => (step, Rounds - 1)));

    /// <summary>Longest that an animal of a subject is held in it.</summary>
    /// <param name="subject">Name of the subject.</param>
    public Duration LongestHold(string subject) =>
        Duration.FromSeconds(Math.Max(First.LongestHold(subject).Seconds, Following?.LongestHold(subject).Seconds ?? 0));
}
