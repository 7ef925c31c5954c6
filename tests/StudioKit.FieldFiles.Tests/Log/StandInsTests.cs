using StudioKit.Field.Log;
using StudioKit.FieldFiles.Log.Rescue;

namespace StudioKit.FieldFiles.Tests.Log;

public sealed class StandInsTests
{
    private static readonly DateTimeOffset Noon = new(2026, 5, 9, 12, 0, 0, TimeSpan.Zero);

    private static readonly Gen<LogSnapshot> TornLogs =
        from sessions in Gen.Int[0, 3].Array[0, 3]
        from subjects in Gen.Select(Gen.Int[0, 9], Gen.Int[0, 4], Gen.Int[0, 5]).Array[0, 8]
        from frames in Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9]).Array[0, 16]
        from measurements in Gen.Int[0, 9].Array[0, 6]
        select new LogSnapshot(
            [.. sessions.Distinct().Select(i => new FieldSession { Id = $"session {i}", Start = FieldDate.OfDay(new DateOnly(2025, 1, 1)) })],
            [.. subjects.DistinctBy(one => one.Item1).Select(one => new FieldSubject { Id = $"subject {one.Item1}", SessionId = $"session {one.Item2}", HoldStart = one.Item3 == 0 ? Noon.AddHours(one.Item1) : null })],
            [.. frames.Select((one, i) => new FieldFrame { SubjectId = $"subject {one.Item1}", FileName = $"{i}.jpg", Taken = one.Item2 == 0 ? null : FieldDate.OfDay(new DateOnly(2026, 5, one.Item2)) })],
            [.. measurements.Select((subject, i) => new FieldMeasurement { Id = $"measurement {i}", SubjectId = $"subject {subject}", Type = "body length", Value = "3" })]);

    /// <summary>Held against looking through the whole log for each record.</summary>
    [Fact]
    public void Stand_ins_are_those_that_a_look_through_the_whole_log_asks_for() =>
        TornLogs.Sample(log =>
        {
            var notes = new List<RescueNote>();
            var whole = StandIns.For(log, notes);

            whole.Subjects.Select(subject => subject.Id).Should().Equal([.. log.Subjects.Select(subject => subject.Id), .. LostSubjects(log)]);
            whole.Sessions.Take(log.Sessions.Count).Should().Equal(log.Sessions);
            whole.Sessions.Skip(log.Sessions.Count).Select(session => session.Id).Should().Equal(LostSessions(log, whole.Subjects));
            whole.Sessions.Skip(log.Sessions.Count).Should().NotContain(session => session.Start != Start(log, whole.Subjects, session.Id));
            notes.Select(note => note.Subject).Should().Equal([.. LostSubjects(log), .. LostSessions(log, whole.Subjects)]);
        });

    private static IEnumerable<string> LostSubjects(LogSnapshot log) =>
        log.Frames.Select(frame => frame.SubjectId).Concat(log.Measurements.Select(measurement => measurement.SubjectId)).Where(id => !log.Subjects.Any(subject => subject.Id == id)).Distinct();

    private static IEnumerable<string> LostSessions(LogSnapshot log, IReadOnlyList<FieldSubject> subjects) =>
        subjects.Select(subject => subject.SessionId).Where(id => !log.Sessions.Any(session => session.Id == id)).Distinct();

    // The first hold tells when; else the day of the first picture; else nothing does.
    private static FieldDate Start(LogSnapshot log, IReadOnlyList<FieldSubject> subjects, string session)
    {
        var own = subjects.Where(subject => subject.SessionId == session).ToList();
        var days = log.Frames.Where(frame => own.Any(subject => subject.Id == frame.SubjectId) && frame.Taken is not null).Select(frame => frame.Taken!.Value.Day).ToList();
        return own.Min(subject => subject.HoldStart) is { } held ? held : FieldDate.OfDay(days.Count > 0 ? days.Min() : DateOnly.MinValue);
    }
}
