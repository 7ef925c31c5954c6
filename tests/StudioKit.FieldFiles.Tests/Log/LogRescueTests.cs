using System.Globalization;
using StudioKit.Field.Log;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;
using StudioKit.FieldFiles.Log.Rescue;

namespace StudioKit.FieldFiles.Tests.Log;

public sealed class LogRescueTests : IDisposable
{
    // A whole night may damage more of them: STUDIOKIT_RANDOM_FILES=5000.
    private static readonly int Files = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_FILES"), CultureInfo.InvariantCulture, out var files) ? files : 100;

    private readonly ScratchFolder _scratch = ScratchFolder.InMemory();
    private int _number;

    public void Dispose() => _scratch.Dispose();

    /// <summary>SQLite reads the same file by its own code.</summary>
    /// <summary>null(4) and zero(4): the device gives bytes without end.</summary>
    [Fact]
    public void What_gives_bytes_without_end_is_no_log()
    {
        if (OperatingSystem.IsLinux())
        {
            LogRescue.Read("/dev/zero").Diagnostics.Should().ContainSingle().Which.Code.Should().Be("FLD460");
        }
    }

    [Fact]
    public void A_sound_log_is_read_as_SQLite_reads_it()
    {
        var (path, truth) = LogOfTheDay();

        var rescued = LogRescue.Read(path).Value!;

        rescued.Log.Should().BeEquivalentTo(truth, options => options.WithStrictOrdering());
        rescued.Notes.Should().BeEmpty();
        rescued.IsWhole.Should().BeTrue();
    }

    [Fact]
    public void What_still_stands_in_the_journal_of_a_killed_writer_is_read_with_it()
    {
        var path = _scratch.File("live.log");
        using var log = FieldLog.Open(path, Clock, () => "").Value!;
        Fill(log);
        foreach (var ending in new[] { "", "-wal" })
        {
            File.Copy(path + ending, _scratch.File("killed.log") + ending);
        }

        new FileInfo(_scratch.File("killed.log-wal")).Length.Should().BeGreaterThan(100_000);
        var rescued = LogRescue.Read(_scratch.File("killed.log")).Value!;

        rescued.Log.Should().BeEquivalentTo(log.Read());
        rescued.Notes.Should().BeEmpty();
    }

    [Fact]
    public void The_first_version_is_rescued_too_and_its_missing_seals_are_told()
    {
        var rescued = LogRescue.Read(Path.Combine(AppContext.BaseDirectory, "Data", "version-1.log")).Value!;

        rescued.Log.Records.Should().HaveCount(8);
        rescued.Notes.Should().Equal(new RescueNote(RescueNoteKind.NoSeals, "log", ""));
    }

    [Fact]
    public void A_log_of_a_later_program_is_not_said_to_be_read_whole()
    {
        var (path, truth) = LogOfTheDay();
        using (var raw = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={path};Pooling=False"))
        {
            raw.Open();
            using var command = raw.CreateCommand();
            command.CommandText = "PRAGMA user_version = 99";
            command.ExecuteNonQuery();
        }

        var rescued = LogRescue.Read(path).Value!;

        rescued.Log.Records.Should().HaveCount(truth.Records.Count());
        rescued.Notes.Should().Equal(new RescueNote(RescueNoteKind.LaterVersion, "log", "99"));
        rescued.IsWhole.Should().BeFalse();
    }

    [Fact]
    public void A_rescued_log_is_a_sound_log_with_the_same_short_identifiers_and_a_history_to_read()
    {
        var (path, truth) = LogOfTheDay();
        var copy = Copied(LogRescue.Read(path).Value!);

        using var before = FieldLog.OpenToRead(path, Clock).Value!;
        using var log = FieldLog.Open(copy, Clock, () => "").Value!;
        log.CheckIntegrity().Should().BeEmpty();
        log.Read().Should().BeEquivalentTo(truth, options => options.WithStrictOrdering());
        log.Index().Entries.Select(entry => (entry.Id, entry.ShortId)).Should().BeEquivalentTo(before.Index().Entries.Select(entry => (entry.Id, entry.ShortId)));
        log.History().Should().HaveCount(before.History().Count + 1).And.Subject.Last().Action.Should().Be(LogAction.Rescued);
        log.Undo().Diagnostics.Single().Code.Should().Be("FLD474", "nothing is taken back across a rescue");
    }

    [Fact]
    public void A_rescue_goes_into_no_file_that_is_there()
    {
        var (path, _) = LogOfTheDay();
        var before = File.ReadAllBytes(path);

        LogRescue.Write(LogRescue.Read(path).Value!, path, Clock).Single().Code.Should().Be("FLD459");

        File.ReadAllBytes(path).Should().Equal(before);
    }

    [Theory]
    [InlineData("DROP TABLE measurement")]
    [InlineData("PRAGMA user_version = 77")]
    [InlineData("UPDATE subject SET sensitivity = 'Secret'")]
    [InlineData("UPDATE session SET start = 'yesterday', latitude = 'north'")]
    [InlineData("UPDATE frame SET iso = 'fast'")]
    public void Strange_values_and_missing_tables_are_rescued_from_the_history(string damage)
    {
        var (path, truth) = LogOfTheDay();
        RawLog.Run(path, damage);
        Refused(path);

        var rescued = LogRescue.Read(path).Value!;

        rescued.Log.Should().BeEquivalentTo(truth);
    }

    [Fact]
    public void Without_a_history_a_strange_value_gives_way_to_a_safe_one_and_is_told()
    {
        var path = _scratch.File("old.log");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Data", "version-1.log"), path);
        RawLog.Run(path, "UPDATE subject SET sensitivity = 'Secret', individual_count = 'many' WHERE rowid = 1");

        var rescued = LogRescue.Read(path).Value!;

        rescued.Log.Subjects[0].Sensitivity.Should().Be(PlaceSensitivity.Withheld, "a secret must not be told");
        rescued.Log.Subjects[0].ScientificName.Should().Be("Dolomedes");
        rescued.Notes.Should().Contain(note => note.Kind == RescueNoteKind.ValueLeftOut && note.Detail.Contains("Secret"));
    }

    [Fact]
    public void Subjects_whose_session_is_lost_are_kept_and_an_empty_session_stands_in()
    {
        var path = _scratch.File("old.log");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Data", "version-1.log"), path);
        RawLog.Run(path, "PRAGMA foreign_keys = OFF; DELETE FROM session");

        var rescued = LogRescue.Read(path).Value!;

        rescued.Log.Subjects.Should().HaveCount(3);
        rescued.Log.Sessions.Should().HaveCount(2).And.OnlyContain(session => session.Start.Day.Year == 2026 || session.Start.Moment != null);
        rescued.Notes.Count(note => note.Kind == RescueNoteKind.StandIn).Should().Be(2);
        using var log = FieldLog.Open(Copied(rescued), Clock, () => "").Value!;
        log.Read().Subjects.Should().HaveCount(3);
    }

    [Fact]
    public void With_its_first_page_gone_a_log_is_found_by_its_rows()
    {
        var (path, truth) = LogOfTheDay();
        var bytes = File.ReadAllBytes(path);
        Array.Clear(bytes, 0, 4096);
        File.WriteAllBytes(path, bytes);

        var rescued = LogRescue.Read(path).Value!;

        rescued.Log.Should().BeEquivalentTo(truth);
        rescued.IsWhole.Should().BeFalse();
    }

    [Fact]
    public void What_was_taken_out_stays_out_though_its_pages_are_still_there()
    {
        var path = _scratch.File("field.log");
        using (var log = FieldLog.Open(path, Clock, () => "").Value!)
        {
            log.Save(LogSamples.Session);
            log.Save(LogSamples.Session with { Id = "gone", Name = "gone" });
            var subjects = Enumerable.Range(0, 60).Select(number => LogSamples.Subject with { Id = $"gone-{number}", SessionId = "gone", Remarks = new string('r', 300) });
            log.Save(LogSnapshot.Empty with { Subjects = [.. subjects] }, LogAction.Recorded);
            log.Delete("gone").IsSound.Should().BeTrue();
        }

        LogRescue.Read(path).Value!.Log.Should().BeEquivalentTo(LogSnapshot.Empty with { Sessions = [LogSamples.Session] });
        var bytes = File.ReadAllBytes(path);
        Array.Clear(bytes, 0, 4096);
        File.WriteAllBytes(path, bytes);
        LogRescue.Read(path).Value!.Log.Should().BeEquivalentTo(LogSnapshot.Empty with { Sessions = [LogSamples.Session] });
    }

    [Fact]
    public void The_history_tells_what_was_taken_out_from_what_was_lost()
    {
        var body = LogSchema.Sessions.Body(LogSamples.Session).Text;
        FoundRow Row(long change, string? before, string? after) => new(change, [change, 0L, "Session", "k7m", 1L, before, after, LogBody.SealOf(before + after)]);

        var kept = new FoundHistory([Row(1, null, body)]);
        var gone = new FoundHistory([Row(2, body, null), Row(1, null, body)]);

        (kept.IsGone(LogRecordKind.Session, "session-1"), kept.Alive(LogRecordKind.Session).Count()).Should().Be((false, 1));
        (gone.IsGone(LogRecordKind.Session, "session-1"), gone.Alive(LogRecordKind.Session).Count()).Should().Be((true, 0));
    }

    [Fact]
    public void Damage_of_any_kind_is_told_in_a_sentence_and_a_rescue_yields_the_truth_or_says_what_is_doubtful()
    {
        var (path, truth) = LogOfTheDay();
        var sound = File.ReadAllBytes(path);
        var known = Texts(truth).ToHashSet(StringComparer.Ordinal);

        AnyDamage(sound.Length).Sample(
            damage =>
            {
                var damaged = _scratch.File(string.Create(CultureInfo.InvariantCulture, $"damaged-{++_number}.log"));
                File.WriteAllBytes(damaged, damage(sound));
                NeverThrows(damaged);
                var rescued = LogRescue.Read(damaged);
                if (rescued.Value is { } left)
                {
                    var doubtful = left.Notes.Where(note => note.Kind >= RescueNoteKind.ValueLeftOut).Select(note => note.Subject).ToHashSet(StringComparer.Ordinal);
                    left.Log.Records.Zip(Texts(left.Log)).Where(pair => !known.Contains(pair.Second)).Select(pair => pair.First.Id).Should().BeSubsetOf(doubtful);
                    IsSoundWhenWritten(left);
                }

                NeverThrowsWhenWritten(damaged);
                File.Delete(damaged);
            },
            iter: Files, threads: 1);
    }

    private static readonly FixedTime Clock = new(LogSamples.Now);
    private static readonly Lazy<(byte[] File, LogSnapshot Truth)> Day = new(Made);

    private static Gen<Func<byte[], byte[]>> AnyDamage(int length)
    {
        var flips = Gen.Select(Gen.Int[0, length - 1], Gen.Int[1, 255]).Array[1, 40].Select(places => (Func<byte[], byte[]>)(bytes => Changed(bytes, copy =>
        {
            foreach (var (at, bits) in places)
            {
                copy[at] ^= (byte)bits;
            }
        })));
        var pages = Gen.Select(Gen.Int[0, (length / 4096) - 1], Gen.Byte).Array[1, 6].Select(places => (Func<byte[], byte[]>)(bytes => Changed(bytes, copy =>
        {
            foreach (var (page, fill) in places)
            {
                copy.AsSpan(page * 4096, 4096).Fill(fill);
            }
        })));
        var cuts = Gen.Int[0, length].Select(left => (Func<byte[], byte[]>)(bytes => bytes[..left]));
        return Gen.OneOf(flips, pages, cuts);
    }

    private static byte[] Changed(byte[] bytes, Action<byte[]> change)
    {
        var copy = bytes.ToArray();
        change(copy);
        return copy;
    }

    private static void NeverThrows(string path)
    {
        using var opened = FieldLog.OpenToRead(path, Clock).Value;
        Try(opened, log => log.CheckIntegrity(), log => log.Read(), log => log.Index(), log => log.History());
    }

    // A new log is a hundred statements, so only some of the cases write one.
    private bool IsWritten => _number % 4 == 0;

    private void IsSoundWhenWritten(RescuedLog rescued)
    {
        if (IsWritten)
        {
            using var log = FieldLog.Open(Copied(rescued), Clock, () => "").Value!;
            log.Read().Should().BeEquivalentTo(rescued.Log);
            log.CheckIntegrity().Should().BeEmpty();
        }
    }

    private void NeverThrowsWhenWritten(string path)
    {
        if (!IsWritten)
        {
            return;
        }

        var number = 0;
        using var opened = FieldLog.OpenExisting(path, Clock, () => string.Create(CultureInfo.InvariantCulture, $"new-{++number}")).Value;
        Try(
            opened,
            log => log.Save(LogSamples.Session with { Id = "" }), log => log.Save(LogSamples.Subject with { Id = "s1", Remarks = "changed" }),
            log => log.Move("s1:spider-001.jpg", LogSamples.Frame with { SubjectId = "s2", FileName = "other.jpg" }), log => log.Delete("s4"),
            log => log.Undo(), log => log.Undo(), log => log.Redo());
    }

    // A DamagedLogException is the sentence; anything else would reach a user as a trace.
    private static void Try(FieldLog? log, params Action<FieldLog>[] actions)
    {
        foreach (var action in log is null ? [] : actions)
        {
            try
            {
                action(log!);
            }
            catch (DamagedLogException damage)
            {
                damage.Diagnostic.Code.Should().MatchRegex("^FLD45");
            }
        }
    }

    private static void Refused(string path)
    {
        var opened = FieldLog.OpenToRead(path, Clock);
        using var log = opened.Value;
        if (log is not null)
        {
            log.Invoking(open => open.Read()).Should().Throw<DamagedLogException>().Which.Diagnostic.Hint.Should().Contain("log rescue");
        }
    }

    private static IEnumerable<string> Texts(LogSnapshot log) =>
    [
        .. log.Sessions.Select(session => LogSchema.Sessions.Body(session).Text),
        .. log.Subjects.Select(subject => LogSchema.Subjects.Body(subject).Text),
        .. log.Frames.Select(frame => LogSchema.Frames.Body(frame).Text),
        .. log.Measurements.Select(measurement => LogSchema.Measurements.Body(measurement).Text),
    ];

    // Many records, long texts that go over several pages, edits, and deletions that leave free pages behind.
    private static void Fill(FieldLog log)
    {
        log.Import(LogSamples.Snapshot);
        log.Save(LogSamples.Session with { Remarks = string.Concat(Enumerable.Repeat("rain, then sun; ", 900)) });
        for (var i = 0; i < 30; i++)
        {
            var subject = LogSamples.Subject with { Id = string.Create(CultureInfo.InvariantCulture, $"s{i}"), Remarks = new string('r', i * 20) };
            log.Save(subject);
            log.Save(LogSamples.Frame with { SubjectId = subject.Id });
            log.Save(LogSamples.Measurement with { Id = "m" + subject.Id, SubjectId = subject.Id });
        }

        for (var i = 0; i < 30; i += 3)
        {
            log.Delete(string.Create(CultureInfo.InvariantCulture, $"s{i}"));
        }

        log.Save(LogSamples.Measurement with { Value = "18.7" });
    }

    private (string Path, LogSnapshot Truth) LogOfTheDay()
    {
        var path = _scratch.File("field.log");
        File.WriteAllBytes(path, Day.Value.File);
        return (path, Day.Value.Truth);
    }

    private static (byte[] File, LogSnapshot Truth) Made()
    {
        using var scratch = ScratchFolder.InMemory();
        LogSnapshot truth;
        using (var log = FieldLog.Open(scratch.File("field.log"), Clock, () => "").Value!)
        {
            Fill(log);
            truth = log.Read();
        }

        return (File.ReadAllBytes(scratch.File("field.log")), truth);
    }

    private string Copied(RescuedLog rescued)
    {
        var path = Path.Combine(_scratch.Path, "copy.log");
        File.Delete(path);
        LogRescue.Write(rescued, path, Clock).Should().BeEmpty();
        return path;
    }
}
