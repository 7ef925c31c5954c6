using System.Globalization;

namespace StudioKit.Field.Log.Release;

/// <summary>Finds what a user should know before a release leaves.</summary>
internal static class ReleaseNotes
{
    public static IReadOnlyList<ReleaseNote> Of(LogSnapshot log, IReadOnlyList<LeavingSession> leaving, IReadOnlyList<SessionRelease> sessions, ReleaseChoices choices) =>
    [
        .. leaving.Where(session => session.IsSensitive).SelectMany(OthersFollow),
        .. LeftOut(log, choices),
        .. NothingToExport(log),
        .. Neighbours(leaving),
        .. sessions.Where(session => session.IsSensitive).SelectMany(TellingNames),
        .. Formulas(sessions),
    ];

    private static IEnumerable<ReleaseNote> OthersFollow(LeavingSession session)
    {
        var cause = session.Subjects.First(subject => subject.Sensitivity == session.Sensitivity);
        var others = session.Subjects.Count(subject => subject.Sensitivity == PlaceSensitivity.Open);
        return others > 0 ? [new ReleaseNote(ReleaseNoteKind.OthersFollow, session.Session.Id, cause.Id, others)] : [];
    }

    private static IEnumerable<ReleaseNote> LeftOut(LogSnapshot log, ReleaseChoices choices)
    {
        var left = choices.LeavesSensitiveOut ? log.Subjects.Count(subject => subject.Sensitivity != PlaceSensitivity.Open) : 0;
        return left > 0 ? [new ReleaseNote(ReleaseNoteKind.LeftOut, "", Count: left)] : [];
    }

    private static IEnumerable<ReleaseNote> NothingToExport(LogSnapshot log)
    {
        var filled = log.Subjects.Select(subject => subject.SessionId).ToHashSet(StringComparer.Ordinal);
        return log.Sessions.Where(session => !filled.Contains(session.Id)).Select(session => new ReleaseNote(ReleaseNoteKind.NothingToExport, session.Id));
    }

    private static IEnumerable<ReleaseNote> TellingNames(SessionRelease session)
    {
        var names = LogRelease.TellingNamesOf(session).ToList();
        return names.Count > 0 ? [new ReleaseNote(ReleaseNoteKind.PictureNameHoldsPlaceWord, session.Session.Id, names[0], names.Count)] : [];
    }

    private static IEnumerable<ReleaseNote> Neighbours(IReadOnlyList<LeavingSession> sessions)
    {
        var others = new NearSessions(sessions.Where(session => !session.IsSensitive).Select(session => session.Session));
        foreach (var sensitive in sessions.Where(session => session.IsSensitive).Select(session => session.Session))
        {
            if (others.Of(sensitive) is var (first, count))
            {
                yield return new ReleaseNote(ReleaseNoteKind.NeighbourToldExactly, sensitive.Id, first.Id, count);
            }
        }
    }

    private static List<ReleaseNote> Formulas(IReadOnlyList<SessionRelease> sessions)
    {
        var notes = new OrderedDictionary<string, ReleaseNote>(StringComparer.Ordinal);
        foreach (var record in sessions.SelectMany(Records))
        {
            foreach (var term in record.Fields.Where(field => LooksLikeFormula(field.Published)).Select(field => field.Term))
            {
                var known = notes.GetValueOrDefault(term) ?? new ReleaseNote(ReleaseNoteKind.LooksLikeFormula, record.Id, term);
                notes[term] = known with { Count = known.Count + 1 };
            }
        }

        return [.. notes.Values];
    }

    private static IEnumerable<ReleasedRecord> Records(SessionRelease session) => session.Subjects.SelectMany(subject =>
        new[] { subject.Record }.Concat(subject.Frames.Select(frame => frame.Record)).Concat(subject.Measurements)).Prepend(session.Record);

    private static bool LooksLikeFormula(string text) =>
        text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
