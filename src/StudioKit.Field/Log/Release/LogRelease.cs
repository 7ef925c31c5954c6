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
        SessionRelease[] sessions =
        [
            .. from session in log.Sessions
               where leaving.Contains(session.Id)
               select SessionRelease(session, [.. leaving[session.Id]], records, choices),
        ];
        return new LogRelease(sessions, [.. ReleaseNotes.Of(log, sessions, choices), .. behind?.Notes ?? []]) { PicturesLeftOut = behind?.FileNames ?? [] };
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

    private static SessionRelease SessionRelease(FieldSession session, IReadOnlyList<FieldSubject> subjects, LogRecords records, ReleaseChoices choices)
    {
        var sensitivity = subjects.Max(subject => subject.Sensitivity);
        var judge = new FieldJudge(session, sensitivity, choices);
        var fields = RecordedFields.Of(session, judge.Cell);
        var record = judge.Judge(session.Id, "", fields);
        return new SessionRelease(
            session, sensitivity, record with { PublishedId = record["eventID"] },
            [.. subjects.Select(subject => new SubjectJudge(judge, session.Id, choices).Judge(subject, record, records))]);
    }
}
