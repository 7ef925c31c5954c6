using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioKit.Field.Log;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

public sealed class FieldLogTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private readonly FixedTime _time = new(LogSamples.Now);
    private int _ids;

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void What_is_saved_comes_back_after_closing()
    {
        using (var log = Open())
        {
            log.Import(LogSamples.Snapshot).Should().BeEmpty();
        }

        using var again = Open();
        again.Read().Should().BeEquivalentTo(LogSamples.Snapshot);
        again.CheckIntegrity().Should().BeEmpty();
    }

    [Fact]
    public void A_closed_log_is_one_file()
    {
        using (var log = Open())
        {
            log.Import(LogSamples.Snapshot);
        }

        Directory.GetFiles(_scratch.Path).Should().ContainSingle().Which.Should().EndWith("field.log");
    }

    [Fact]
    public void Records_get_an_identifier_and_can_be_changed_under_it()
    {
        using var log = Open();
        var session = log.Save(LogSamples.Session with { Id = "" }).Value!;

        log.Save(session with { Remarks = "stopped raining" });

        log.Read().Sessions.Should().ContainSingle().Which.Remarks.Should().Be("stopped raining");
    }

    [Fact]
    public void A_hold_warns_at_its_limit_and_ends_with_the_release()
    {
        using var log = Open();
        log.Save(LogSamples.Session);
        var held = log.StartHold(LogSamples.Subject with { HoldStart = null, HoldEnd = null }, TimeSpan.FromMinutes(10)).Value!;

        _time.Now = LogSamples.Now.AddMinutes(9);
        log.Hold(held)!.IsAtLimit.Should().BeFalse();
        log.Hold(held)!.Remaining.Should().Be(TimeSpan.FromMinutes(1));
        _time.Now = LogSamples.Now.AddMinutes(10);
        log.Hold(held)!.IsAtLimit.Should().BeTrue();
        log.StartHold(held, TimeSpan.FromMinutes(10)).Diagnostics.Single().Code.Should().Be("FLD417");

        var let = log.StopHold(held, released: true).Value!;
        _time.Now = LogSamples.Now.AddMinutes(50);
        log.Hold(let)!.Should().Be(new HoldStatus(TimeSpan.FromMinutes(10), TimeSpan.FromMinutes(10), false));
        log.StopHold(let, released: true).Diagnostics.Single().Code.Should().Be("FLD418");
    }

    [Fact]
    public void A_subject_without_its_session_is_refused()
    {
        using var log = Open();

        log.Save(LogSamples.Subject).Diagnostics.Single().Code.Should().Be("FLD454");
    }

    [Fact]
    public void An_import_with_one_bad_record_takes_in_nothing()
    {
        using var log = Open();
        var stray = LogSamples.Measurement with { Id = "stray", SubjectId = "nobody" };

        log.Import(LogSamples.Snapshot with { Measurements = [stray] }).Should().ContainSingle().Which.Code.Should().Be("FLD454");

        log.Read().Sessions.Should().BeEmpty();
    }

    [Fact]
    public void Other_files_are_left_alone()
    {
        File.WriteAllText(_scratch.File("text.log"), new string('x', 5000));
        FieldLog.Open(_scratch.File("text.log"), _time, () => "").Diagnostics.Single().Code.Should().Be("FLD451");

        using (var other = new SqliteConnection($"Data Source={_scratch.File("other.db")};Pooling=False"))
        {
            other.Open();
            using var command = other.CreateCommand();
            command.CommandText = "CREATE TABLE theirs (a)";
            command.ExecuteNonQuery();
        }

        FieldLog.Open(_scratch.File("other.db"), _time, () => "").Diagnostics.Single().Code.Should().Be("FLD451");
    }

    [Fact]
    public void A_log_of_a_newer_program_is_not_touched()
    {
        Open().Dispose();
        using (var raw = new SqliteConnection($"Data Source={_scratch.File("field.log")};Pooling=False"))
        {
            raw.Open();
            using var command = raw.CreateCommand();
            command.CommandText = "PRAGMA user_version = 99";
            command.ExecuteNonQuery();
        }

        FieldLog.Open(_scratch.File("field.log"), _time, () => "").Diagnostics.Single().Code.Should().Be("FLD453");
    }

    private FieldLog Open() => FieldLog.Open(
        _scratch.File("field.log"), _time, () => string.Create(CultureInfo.InvariantCulture, $"id-{++_ids}")).Value!;
}
