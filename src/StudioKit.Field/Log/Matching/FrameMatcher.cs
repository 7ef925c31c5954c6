using StudioKit.Planning;

namespace StudioKit.Field.Log.Matching;

/// <summary>Matches pictures to the subjects of a log, by who was in hand when they were taken.</summary>
public sealed class FrameMatcher
{
    private readonly LogSnapshot _log;
    private readonly IReadOnlyList<SubjectWindow> _windows;
    private readonly TimeSpan _zone;
    private readonly CameraClock _clock;
    private readonly bool _isClockGiven;
    private readonly FramingMatcher? _framings;

    /// <summary>A matcher.</summary>
    /// <param name="log">The log.</param>
    /// <param name="sessionId">The only session to be looked at; none for all.</param>
    /// <param name="clock">The camera's clock; none where nothing is known of it.</param>
    /// <param name="zone">How far the clock of the computer is ahead of universal time, for pictures that no session is near.</param>
    /// <param name="plan">Plan of the kit; none where framings are not asked for.</param>
    public FrameMatcher(LogSnapshot log, string? sessionId, CameraClock? clock, TimeSpan zone, Plan? plan)
    {
        ArgumentNullException.ThrowIfNull(log);
        (_log, _zone, _clock, _isClockGiven) = (log, zone, clock ?? CameraClock.Right, clock is not null);
        _windows = SubjectWindow.Of(log, sessionId);
        _framings = plan is null ? null : new FramingMatcher(plan);
    }

    /// <summary>Matches one picture.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="subject">Whom it shows, where somebody says so.</param>
    public FrameMatch Match(LoggedPicture picture, FieldSubject? subject = null)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return new FrameMatch(picture, WhomItShows(picture, subject), _framings?.Match(picture) ?? FramingMatch.NotAsked) { IsClockGiven = _isClockGiven };
    }

    private SubjectMatch WhomItShows(LoggedPicture picture, FieldSubject? named)
    {
        if ((named ?? LoggedWith(picture)) is { } subject)
        {
            return new SubjectMatch(named is null ? SubjectMatchKind.LoggedBefore : SubjectMatchKind.Named, subject) { Taken = _clock.Taken(picture.Settings, ZoneOf(subject)) };
        }

        if (_clock.Taken(picture.Settings, _zone) is not { } taken)
        {
            return new SubjectMatch(SubjectMatchKind.NoTime, null);
        }

        // Each window is asked on its own session's clock.
        var inHand = _windows.Where(window => window.Gap(TakenIn(window, picture)) == TimeSpan.Zero).OrderBy(window => window.From).ToList();
        return inHand.Count > 0
            ? new SubjectMatch(inHand.Count == 1 ? SubjectMatchKind.InHand : SubjectMatchKind.LastOfSeveral, inHand[^1].Subject)
            {
                Taken = TakenIn(inHand[^1], picture),
                Others = [.. inHand.Take(inHand.Count - 1).Select(window => window.Subject)],
            }
            : Nobody(picture, taken);
    }

    private SubjectMatch Nobody(LoggedPicture picture, DateTimeOffset taken)
    {
        var nearest = _windows.MinBy(window => window.Gap(TakenIn(window, picture)));
        return nearest is null ? new SubjectMatch(SubjectMatchKind.NobodyInHand, null) { Taken = taken } : new SubjectMatch(SubjectMatchKind.NobodyInHand, null)
        {
            Taken = TakenIn(nearest, picture),
            Nearest = nearest.Subject,
            Gap = TakenIn(nearest, picture) < nearest.From ? -nearest.Gap(TakenIn(nearest, picture)) : nearest.Gap(TakenIn(nearest, picture)),
        };
    }

    private DateTimeOffset TakenIn(SubjectWindow window, LoggedPicture picture) => _clock.Taken(picture.Settings, window.From.Offset)!.Value;

    // Cameras count to 9999 and begin again, so a name alone is not enough where both have a time.
    private FieldSubject? LoggedWith(LoggedPicture picture)
    {
        var same = _log.Frames.Where(frame => frame.FileName == picture.FileName && IsSameTime(frame, picture)).ToList();
        return same is [var only] ? _log.Subjects.FirstOrDefault(subject => subject.Id == only.SubjectId) : null;
    }

    private static bool IsSameTime(FieldFrame frame, LoggedPicture picture) =>
        frame.Taken?.Moment is not { } logged || picture.Settings.TakenLocal is not { } local || (logged.DateTime - local).Duration() < TimeSpan.FromDays(2);

    private TimeSpan ZoneOf(FieldSubject subject) =>
        _log.Sessions.FirstOrDefault(session => session.Id == subject.SessionId)?.Start.Moment?.Offset ?? _zone;
}
