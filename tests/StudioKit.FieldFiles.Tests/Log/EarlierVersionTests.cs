using Microsoft.Data.Sqlite;
using StudioKit.Field.Log;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>Data/version-1.log was written by the first released version; what it must hold is what was typed into that version.</summary>
public sealed class EarlierVersionTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void A_log_of_the_first_version_holds_what_was_typed_into_it()
    {
        using var log = FieldLog.Open(Old(), Clock, () => "").Value!;

        Holds(log.Read());
        log.CheckIntegrity().Should().BeEmpty();
        log.History().Should().BeEmpty();
        log.Undo().Diagnostics.Single().Code.Should().Be("FLD474");
    }

    [Fact]
    public void A_log_of_the_first_version_is_read_without_being_changed()
    {
        var path = Old();
        var before = File.ReadAllBytes(path);

        IReadOnlyList<LogEntry> read;
        using (var log = FieldLog.OpenToRead(path, Clock).Value!)
        {
            Holds(log.Read());
            read = log.Index().Entries;
        }

        File.ReadAllBytes(path).Should().Equal(before);
        using var migrated = FieldLog.Open(path, Clock, () => "").Value!;
        migrated.Index().Entries.Should().Equal(read, "short identifiers that were shown stay");
    }

    [Fact]
    public void A_migration_that_fails_leaves_the_old_log_as_it_was()
    {
        var path = Old();
        using (var raw = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            // The table that the second version adds is there already, so its step fails half way.
            raw.Open();
            using var command = raw.CreateCommand();
            command.CommandText = "CREATE TABLE changed_record (theirs TEXT)";
            command.ExecuteNonQuery();
        }

        FieldLog.Open(path, Clock, () => "").IsSound.Should().BeFalse();

        using var log = FieldLog.OpenToRead(path, Clock).Value!;
        Holds(log.Read());
    }

    private static readonly FixedTime Clock = new(LogSamples.Now);

    private string Old()
    {
        var path = _scratch.File("field.log");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Data", "version-1.log"), path);
        return path;
    }

    private static void Holds(LogSnapshot log)
    {
        log.Sessions.Select(session => session.Name).Should().Equal("Wisplow Fen, evening", "Moths at the heath");
        log.Sessions[0].Should().BeEquivalentTo(
            LogSamples.Session with { Id = log.Sessions[0].Id, Locality = "Boardwalk, north end", SamplingProtocol = "" });
        log.Subjects.Select(subject => (subject.ScientificName, subject.Sensitivity)).Should().Equal(
            ("Dolomedes", PlaceSensitivity.Tenth), ("Drosera anglica", PlaceSensitivity.Open), ("Saturnia", PlaceSensitivity.Open));
        log.Subjects[2].Released.Should().BeTrue();
        log.Frames.Select(frame => (frame.FileName, frame.MicrometresPerPixel, frame.Lens)).Should().Equal(("spider-001.png", 5.625, ""), ("sundew.png", null, ""));
        log.Measurements.Single().Should().BeEquivalentTo(
            LogSamples.Measurement with { Id = log.Measurements[0].Id, SubjectId = log.Subjects[0].Id, Method = "" });
    }
}
