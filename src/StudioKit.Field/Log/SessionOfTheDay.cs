namespace StudioKit.Field.Log;

/// <summary>Tells which session a person means who names none.</summary>
public static class SessionOfTheDay
{
    // A night at the light trap goes on into the next day.
    private static readonly TimeSpan LongestNight = TimeSpan.FromHours(16);

    /// <summary>The session that goes on, else the last one of today.</summary>
    /// <param name="sessions">All sessions.</param>
    /// <param name="now">Present moment on the clock of the computer.</param>
    /// <returns>The session that began last of those in question; none where there is none.</returns>
    /// <remarks>
    /// What day it is, is asked of the session's own clock where it has one. A session without an end goes on for 16 hours from its start at most,
    /// the length of a night in the field; common practice, no source.
    /// </remarks>
    public static FieldSession? Of(IEnumerable<FieldSession> sessions, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(sessions);
        return sessions.Where(session => GoesOn(session, now) || IsToday(session, now)).MaxBy(session => (session.Start.Day, session.Start.Moment?.UtcDateTime));
    }

    private static bool GoesOn(FieldSession session, DateTimeOffset now) => (session.Start.Moment, session.End?.Moment) switch
    {
        ({ } start, { } end) => start <= now && now <= end,
        ({ } start, null) => session.End is null && start <= now && now - start <= LongestNight,
        _ => false,
    };

    private static bool IsToday(FieldSession session, DateTimeOffset now)
    {
        var today = DateOnly.FromDateTime(now.ToOffset(session.Start.Moment?.Offset ?? now.Offset).DateTime);
        return session.Start.Day <= today && today <= (session.End ?? session.Start).Day;
    }
}
