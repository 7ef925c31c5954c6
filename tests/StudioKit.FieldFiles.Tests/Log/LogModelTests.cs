using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>Random work on a log against the simplest model of one: a list of states, and a place in it.</summary>
public sealed class LogModelTests : IDisposable
{
    // A whole night may draw more of them: STUDIOKIT_RANDOM_FILES=5000.
    private static readonly int Runs = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_FILES"), CultureInfo.InvariantCulture, out var runs) ? runs : 100;

    private static readonly Gen<Step[]> AnyWork = Gen.Select(Gen.Int[0, 9], Gen.Int[0, 3], Gen.Int[0, 3], Gen.Int[0, 2], (kind, id, other, value) => new Step(kind, id, other, value)).Array[1, 25];

    private readonly ScratchFolder _scratch = ScratchFolder.InMemory();
    private int _number;

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void After_any_work_undone_and_made_again_the_log_holds_what_the_model_does() => AnyWork.Sample(
        work =>
        {
            var path = _scratch.File(string.Create(CultureInfo.InvariantCulture, $"{++_number}.log"));
            using (var log = FieldLog.Open(path, new FixedTime(LogSamples.Now), () => "").Value!)
            {
                var model = new LogModel();
                var shown = new Dictionary<string, string>(StringComparer.Ordinal);
                foreach (var step in work)
                {
                    var before = log.History().Count;
                    step.On(log).Should().Be(model.Do(step), $"{step}");
                    Texts(log.Read()).Should().Equal(Texts(model.Now), $"{step}");
                    log.History().Count.Should().BeGreaterThanOrEqualTo(before, "the history only grows");
                    StaysStable(log, shown);
                }

                log.CheckIntegrity().Should().BeEmpty();
            }

            File.Delete(path);
        },
        iter: Runs, threads: 1);

    private static void StaysStable(FieldLog log, Dictionary<string, string> shown)
    {
        var entries = log.Index().Entries;
        entries.Should().HaveCount(log.Read().Records.Count());
        entries.Select(entry => entry.ShortId).Should().OnlyHaveUniqueItems();
        foreach (var entry in entries.Where(entry => entry.Kind != LogRecordKind.Frame))
        {
            shown.TryAdd(entry.Id, entry.ShortId);
            entry.ShortId.Should().Be(shown[entry.Id], "a short identifier that was shown stays");
        }
    }

    private static List<string> Texts(LogSnapshot log) =>
    [
        .. log.Sessions.Select(session => LogSchema.Sessions.Body(session).Text).Order(StringComparer.Ordinal),
        .. log.Subjects.Select(subject => LogSchema.Subjects.Body(subject).Text).Order(StringComparer.Ordinal),
        .. log.Frames.Select(frame => LogSchema.Frames.Body(frame).Text).Order(StringComparer.Ordinal),
        .. log.Measurements.Select(measurement => LogSchema.Measurements.Body(measurement).Text).Order(StringComparer.Ordinal),
    ];

    /// <summary>One thing done to a log.</summary>
    internal sealed record Step(int Kind, int Id, int Other, int Value)
    {
        public FieldSession Session => LogSamples.Session with { Id = $"s{Id}", Remarks = $"remark {Value}" };

        public FieldSubject Subject => LogSamples.Subject with { Id = $"a{Id}", SessionId = $"s{Other}", Remarks = $"remark {Value}" };

        public FieldFrame Frame => LogSamples.Frame with { SubjectId = $"a{Id}", FileName = $"p{Value}.jpg", Caption = $"caption {Other}" };

        public FieldMeasurement Measurement => LogSamples.Measurement with { Id = $"m{Id}", SubjectId = $"a{Other}", Value = $"{Value}" };

        public string Gone => (Value % 2 == 0 ? "s" : "a") + Id.ToString(CultureInfo.InvariantCulture);

        public string Moved => $"a{Other}:p{Value}.jpg";

        public bool On(FieldLog log) => Kind switch
        {
            0 or 1 => log.Save(Session).IsSound,
            2 or 3 => log.Save(Subject).IsSound,
            4 => log.Save(Frame).IsSound,
            5 => log.Save(Measurement).IsSound,
            6 => log.Delete(Gone).IsSound,
            7 => log.Read().Frames.Any(frame => frame.Id == Moved) && log.Move(Moved, Frame).IsSound,
            8 => log.Undo().IsSound,
            _ => log.Redo().IsSound,
        };
    }
}
