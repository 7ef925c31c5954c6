using StudioKit.Field.Log;

namespace StudioKit.Field.Tests.Log;

public sealed class LogTreeTests
{
    private static readonly FieldSession[] Sessions = [.. Enumerable.Range(0, 3).Select(i => new FieldSession { Id = $"session {i}", Start = FieldDate.OfDay(new DateOnly(2026, 5, 9 + i)) })];

    /// <summary>Held against looking through the whole log for each record.</summary>
    [Fact]
    public void What_belongs_to_a_record_is_what_a_look_through_the_whole_log_finds_in_its_order() =>
        Logs.Sample(log =>
        {
            var tree = new LogTree(log);
            foreach (var session in Sessions)
            {
                tree.Of(session).Should().Equal(log.Subjects.Where(subject => subject.SessionId == session.Id));
            }

            foreach (var subject in log.Subjects)
            {
                tree.Frames(subject).Should().Equal(log.Frames.Where(frame => frame.SubjectId == subject.Id));
                tree.Measurements(subject).Should().Equal(log.Measurements.Where(measurement => measurement.SubjectId == subject.Id));
                log.With(subject.Id).Frames.Should().Equal(log.Frames.Where(frame => frame.SubjectId == subject.Id));
            }
        });

    private static Gen<LogSnapshot> Logs =>
        from of in Gen.Int[0, 3].Array[0, 12]
        from frames in Gen.Int[0, 12].Array[0, 30]
        from measurements in Gen.Int[0, 12].Array[0, 30]
        select new LogSnapshot(
            Sessions,
            [.. of.Select((session, i) => new FieldSubject { Id = $"subject {i}", SessionId = $"session {session}" })],
            [.. frames.Select((subject, i) => new FieldFrame { SubjectId = $"subject {subject}", FileName = $"{i}.jpg" })],
            [.. measurements.Select((subject, i) => new FieldMeasurement { Id = $"measurement {i}", SubjectId = $"subject {subject}", Type = "body length", Value = "3", Unit = "mm" })]);
}
