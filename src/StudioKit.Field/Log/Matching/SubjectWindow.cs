namespace StudioKit.Field.Log.Matching;

/// <summary>The time in which the pictures taken are of a subject.</summary>
/// <param name="Subject">The subject.</param>
/// <param name="From">When it was taken up.</param>
/// <param name="Until">When it was let go; where that was not noted, when the next one was taken up, or the session ended.</param>
public sealed record SubjectWindow(FieldSubject Subject, DateTimeOffset From, DateTimeOffset Until)
{
    // Where nobody noted any end.
    private static readonly TimeSpan Longest = TimeSpan.FromHours(1);

    /// <summary>The windows of a log's subjects, each session by itself.</summary>
    /// <param name="log">The log.</param>
    /// <param name="sessionId">The only session to be looked at; none for all.</param>
    public static IReadOnlyList<SubjectWindow> Of(LogSnapshot log, string? sessionId = null)
    {
        ArgumentNullException.ThrowIfNull(log);
        var tree = new LogTree(log);
        return [.. log.Sessions.Where(session => sessionId is null || session.Id == sessionId).SelectMany(session => Of(session, tree))];
    }

    /// <summary>How far a moment lies outside; zero within.</summary>
    /// <param name="moment">The moment.</param>
    public TimeSpan Gap(DateTimeOffset moment) => moment < From ? From - moment : moment > Until ? moment - Until : TimeSpan.Zero;

    private static IEnumerable<SubjectWindow> Of(FieldSession session, LogTree tree)
    {
        var held = tree.Of(session).Where(subject => subject.HoldStart is not null).OrderBy(subject => subject.HoldStart).ToList();
        return held.Select((subject, place) =>
        {
            var from = subject.HoldStart!.Value;
            var next = place + 1 < held.Count ? held[place + 1].HoldStart : null;
            return new SubjectWindow(subject, from, subject.HoldEnd ?? Earliest(next, session.End?.Moment, from + Longest));
        });
    }

    private static DateTimeOffset Earliest(DateTimeOffset? next, DateTimeOffset? end, DateTimeOffset longest)
    {
        var until = next ?? end ?? longest;
        return until < longest ? until : longest;
    }
}
