using System.Globalization;
using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>Makes up the lost sessions and subjects that others belong to, with nothing in them but a date.</summary>
internal static class StandIns
{
    private const string Version7 = "urn:uuid:";

    /// <summary>The same log, with nothing in it that belongs to nothing.</summary>
    public static LogSnapshot For(LogSnapshot log, List<RescueNote> notes)
    {
        var (subjects, tree) = (log.Subjects.ToList(), new LogTree(log));
        foreach (var lost in log.Frames.Select(frame => frame.SubjectId).Concat(log.Measurements.Select(measurement => measurement.SubjectId)).Distinct(StringComparer.Ordinal)
            .Except(log.Subjects.Select(subject => subject.Id), StringComparer.Ordinal).ToList())
        {
            // Whether its place may be told is lost with it.
            subjects.Add(new FieldSubject { Id = lost, SessionId = lost + "#session", Sensitivity = PlaceSensitivity.Withheld });
            notes.Add(new RescueNote(RescueNoteKind.StandIn, lost, ""));
        }

        var (sessions, left) = (log.Sessions.ToList(), log.Sessions.Select(session => session.Id).ToHashSet(StringComparer.Ordinal));
        foreach (var group in subjects.GroupBy(subject => subject.SessionId, StringComparer.Ordinal).Where(group => !left.Contains(group.Key)))
        {
            sessions.Add(new FieldSession { Id = group.Key, Start = Start([.. group], tree) });
            notes.Add(new RescueNote(RescueNoteKind.StandIn, group.Key, ""));
        }

        return log with { Sessions = sessions, Subjects = subjects };
    }

    /// <summary>The day on which a record was put in, as far as its identifier tells it.</summary>
    /// <remarks>The first 48 bits of a UUID of version 7 count milliseconds since 1970 (RFC 9562, 5.7).</remarks>
    public static FieldDate Day(string id)
    {
        var text = id.StartsWith(Version7, StringComparison.Ordinal) && id.Length > 23 && id[23] == '7' ? id[9..17] + id[18..22] : "";
        return long.TryParse(text, NumberStyles.HexNumber, CultureInfo.InvariantCulture, out var milliseconds) && milliseconds < 253_402_300_800_000
            ? FieldDate.OfDay(DateOnly.FromDateTime(DateTimeOffset.FromUnixTimeMilliseconds(milliseconds).UtcDateTime))
            : FieldDate.OfDay(DateOnly.MinValue);
    }

    private static FieldDate Start(IReadOnlyList<FieldSubject> subjects, LogTree log)
    {
        var held = subjects.Select(subject => subject.HoldStart).OfType<DateTimeOffset>().Order().ToList();
        var taken = subjects.SelectMany(log.Frames).Select(frame => frame.Taken).OfType<FieldDate>().Select(date => date.Day).Order().ToList();
        return held.Count > 0 ? held[0] : taken.Count > 0 ? FieldDate.OfDay(taken[0]) : Day(subjects[0].SessionId);
    }
}
