namespace StudioKit.Field.Log.Release;

/// <summary>Everything that leaves a log, field by field: what a preview shows and what every export, plate and clean copy is made from.</summary>
/// <remarks>
/// A session is told as coarsely as the most sensitive of its subjects asks, and so are all its subjects: their rows bear the same event and would
/// give the place away. Of a sensitive session only what cannot tell the place leaves, and what the user released.
/// </remarks>
/// <param name="Sessions">Sessions with at least one subject.</param>
/// <param name="Notes">What a user should know before they leave.</param>
public sealed record LogRelease(IReadOnlyList<SessionRelease> Sessions, IReadOnlyList<ReleaseNote> Notes)
{
    /// <summary>What leaves a log.</summary>
    /// <param name="log">The log.</param>
    /// <param name="choices">What the user decided.</param>
    public static LogRelease Of(LogSnapshot log, ReleaseChoices choices)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(choices);
        var behind = choices.LeavesSensitiveOut ? new PicturesLeftOut(log) : null;
        var records = new LogRecords(log, behind?.Leaving ?? log.Frames);
        var leaving = log.Subjects.Where(subject => !choices.LeavesSensitiveOut || subject.Sensitivity == PlaceSensitivity.Open)
            .ToLookup(subject => subject.SessionId, StringComparer.Ordinal);
        LeavingSession[] sessions = [.. log.Sessions.Where(session => leaving.Contains(session.Id)).Select(session => new LeavingSession(session, [.. leaving[session.Id]]))];
        var judged = new JudgedOnVisit<LeavingSession, SessionRelease>(sessions, session => SessionRelease(session, records, choices));
        return new LogRelease(judged, [.. ReleaseNotes.Of(log, sessions, judged, choices), .. behind?.Notes ?? []]) { PicturesLeftOut = behind?.FileNames ?? [] };
    }

    /// <summary>What leaves of a log without anything released.</summary>
    /// <param name="log">The log.</param>
    public static LogRelease Of(LogSnapshot log) => Of(log, ReleaseChoices.None);

    /// <summary>File names of the pictures of sensitive subjects that stay behind.</summary>
    public IReadOnlyList<string> PicturesLeftOut { get; init; } = [];

    /// <summary>File names of the pictures whose originals may not leave.</summary>
    public IEnumerable<string> SensitivePictures => Sessions.Where(session => session.IsSensitive).SelectMany(FileNames).Concat(PicturesLeftOut);

    /// <summary>Those of them that hold a word of their place's name.</summary>
    public IEnumerable<string> TellingNames => Sessions.Where(session => session.IsSensitive).SelectMany(TellingNamesOf);

    internal static IEnumerable<string> TellingNamesOf(SessionRelease session)
    {
        var words = new PlaceWords(session.Session);
        return FileNames(session).Where(name => words.In(name) is not null);
    }

    private static IEnumerable<string> FileNames(SessionRelease session) => session.Subjects.SelectMany(subject => subject.Frames).Select(frame => frame.Frame.FileName);

    private static SessionRelease SessionRelease(LeavingSession leaving, LogRecords records, ReleaseChoices choices)
    {
        var session = leaving.Session;
        var judge = new FieldJudge(session, leaving.Sensitivity, choices);
        var record = judge.Judge(session.Id, "", RecordedFields.Of(session, judge.Cell));
        var subjects = new SubjectJudge(judge, session.Id, choices);
        return new SessionRelease(
            session, leaving.Sensitivity, record with { PublishedId = record["eventID"] },
            new JudgedOnVisit<FieldSubject, SubjectRelease>(leaving.Subjects, subject => subjects.Judge(subject, record, records)));
    }
}
