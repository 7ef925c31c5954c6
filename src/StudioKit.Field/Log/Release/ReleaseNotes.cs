using System.Globalization;

namespace StudioKit.Field.Log.Release;

/// <summary>Finds what a user should know before a release leaves.</summary>
internal static class ReleaseNotes
{
    // Within this of a place of which only the country is told, another's exact place says too much (common practice, no source): the widest of the
    // usual cells, a tenth of a degree.
    private const double NearDegrees = 0.1;

    public static IReadOnlyList<ReleaseNote> Of(LogSnapshot log, IReadOnlyList<SessionRelease> sessions, ReleaseChoices choices) =>
    [
        .. sessions.Where(session => session.IsSensitive).SelectMany(session => OthersFollow(session)),
        .. LeftOut(log, choices),
        .. NothingToExport(log),
        .. sessions.Where(session => session.IsSensitive).SelectMany(session => Neighbours(session, sessions)),
        .. sessions.Where(session => session.IsSensitive).SelectMany(TellingNames),
        .. Formulas(sessions),
    ];

    private static IEnumerable<ReleaseNote> OthersFollow(SessionRelease session)
    {
        var cause = session.Subjects.First(subject => subject.Subject.Sensitivity == session.Sensitivity).Subject;
        var others = session.Subjects.Count(subject => subject.Subject.Sensitivity == PlaceSensitivity.Open);
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

    private static IEnumerable<ReleaseNote> Neighbours(SessionRelease sensitive, IReadOnlyList<SessionRelease> sessions)
    {
        var near = sessions.Where(other => !other.IsSensitive && other.Session.Latitude is not null && IsNear(sensitive.Session, other.Session)).ToList();
        return near.Count > 0 ? [new ReleaseNote(ReleaseNoteKind.NeighbourToldExactly, sensitive.Session.Id, near[0].Session.Id, near.Count)] : [];
    }

    private static bool IsNear(FieldSession sensitive, FieldSession other) =>
        RecordText.EventDays(sensitive) == RecordText.EventDays(other)
        || (sensitive.Latitude is { } latitude && sensitive.Longitude is { } longitude
            && Math.Abs(latitude - other.Latitude!.Value) < NearDegrees && Math.Abs(longitude - other.Longitude!.Value) < NearDegrees);

    private static IEnumerable<ReleaseNote> Formulas(IReadOnlyList<SessionRelease> sessions) =>
        from record in sessions.SelectMany(Records)
        from field in record.Fields
        where LooksLikeFormula(field.Published)
        group record by field.Term into found
        select new ReleaseNote(ReleaseNoteKind.LooksLikeFormula, found.First().Id, found.Key, found.Count());

    private static IEnumerable<ReleasedRecord> Records(SessionRelease session) => session.Subjects.SelectMany(subject =>
        new[] { subject.Record }.Concat(subject.Frames.Select(frame => frame.Record)).Concat(subject.Measurements)).Prepend(session.Record);

    private static bool LooksLikeFormula(string text) =>
        text is ['=' or '+' or '-' or '@' or '\t' or '\r', ..] && !double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}
