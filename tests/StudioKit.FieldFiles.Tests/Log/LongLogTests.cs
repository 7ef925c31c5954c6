using Microsoft.Data.Sqlite;
using StudioKit.Field.Log;
using StudioKit.Field.Tests.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.FieldFiles.Tests.Log;

public sealed class LongLogTests : IDisposable
{
    private readonly ScratchFolder _scratch = new();
    private readonly FixedTime _clock = new(LogSamples.Now);

    public void Dispose() => _scratch.Dispose();

    /// <summary>What is allocated counts the rows that are visited: four times the log is four times that. The file's own check is SQLite's.</summary>
    [Fact]
    public void Reading_and_checking_a_log_grows_with_its_length_and_not_with_its_square()
    {
        Cost(Written(40));
        var (shorter, longer) = (Written(150), Written(600));

        (Cost(longer) / (double)Cost(shorter)).Should().BeInRange(3, 5);
    }

    [Fact]
    public void A_word_that_many_records_hold_is_kept_once()
    {
        using var log = Opened(Written(5));

        var subjects = log.Read().Subjects;

        subjects[^1].VernacularName.Should().BeSameAs(subjects[0].VernacularName).And.Be("raft spider");
    }

    /// <summary>Short identifiers are shown in the order in which they were given, also across changes.</summary>
    [Fact]
    public void Records_of_many_changes_stand_in_the_order_in_which_they_were_put_in()
    {
        var path = Written(3);
        using (var log = FieldLog.Open(path, _clock, () => "").Value!)
        {
            log.Save(LogSamples.Session with { Id = "later" });
            log.Save(LongLogs.Of(4), LogAction.Imported).Should().BeEmpty();
        }

        using var read = Opened(path);

        read.Index().Entries.Select(entry => entry.Id).Should().Equal(
            [.. LongLogs.Of(3).Records.Select(record => record.Id), "later", .. LongLogs.Of(4).Records.Select(record => record.Id).Except(LongLogs.Of(3).Records.Select(record => record.Id))]);
    }

    /// <summary>Held against what the data provider reads of the same columns.</summary>
    [Fact]
    public void A_column_is_read_as_the_data_provider_reads_it()
    {
        using var connection = new SqliteConnection("Data Source=:memory:");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT NULL, 7, -9223372036854775808, 0.1, 1e400, '', 'é蛾 \"x\"', 'a' || char(0) || 'b', x'00FF', x''";
        using var reader = command.ExecuteReader();
        reader.Read();

        for (var place = 0; place < reader.FieldCount; place++)
        {
            StoredColumn.Value(reader.Handle!, place).Should().BeEquivalentTo(reader.IsDBNull(place) ? null : reader.GetValue(place), $"it stands in column {place}");
        }
    }

    [Fact]
    public void A_row_that_was_changed_since_it_was_read_is_found_by_the_next_look()
    {
        var path = Written(2);
        using var log = FieldLog.Open(path, _clock, () => "").Value!;
        log.Read();
        log.CheckIntegrity().Should().BeEmpty();
        RawLog.Run(path, "UPDATE frame SET caption = 'flipped' WHERE rowid = 1");

        log.Read();

        log.CheckIntegrity().Should().ContainSingle().Which.Should().StartWith("row 1 of frame");
    }

    private long Cost(string path)
    {
        using var log = Opened(path);
        var before = GC.GetAllocatedBytesForCurrentThread();
        log.Index();
        log.CheckIntegrity().Should().BeEmpty();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    private FieldLog Opened(string path) => FieldLog.OpenToRead(path, _clock).Value!;

    private string Written(int sessions)
    {
        var path = _scratch.File($"{sessions}.log");
        using var log = FieldLog.Open(path, _clock, () => "").Value!;
        log.Save(LongLogs.Of(sessions), LogAction.Imported).Should().BeEmpty();
        return path;
    }
}
