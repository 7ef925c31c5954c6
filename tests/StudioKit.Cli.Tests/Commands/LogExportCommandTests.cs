using System.Text.Json;
using Microsoft.Data.Sqlite;
using StudioKit.Planning.Tables;

namespace StudioKit.Cli.Tests.Commands;

public sealed class LogExportCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_preview_lists_what_leaves_and_what_stays_and_writes_nothing()
    {
        var log = Log("Tenth");
        var before = Directory.GetFiles(_folder.Path);

        var run = CommandRun.Of("log", "export", "--log", log, "--preview", "--archive", _folder.File("fen.zip"));

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("WITHHELD habitat: alkaline fen (words may tell the place; --release habitat tells it)")
            .And.Contain("coarsened decimalLatitude: 52.61234 -> 52.65").And.Contain("published scientificName: Dolomedes");
        Directory.GetFiles(_folder.Path).Should().BeEquivalentTo(before);
    }

    [Fact]
    public void What_the_preview_calls_published_is_what_the_file_holds()
    {
        var log = Log("Hundredth");
        CommandRun.Of("log", "export", "--log", log, "--csv", _folder.File("fen.csv"), "--release", "habitat").ExitCode.Should().Be(0);
        var rows = CsvText.Read(File.ReadAllText(_folder.File("fen.csv")));
        var written = rows[0].Zip(rows[1], (term, value) => (term.Text, value.Text)).Where(pair => pair.Item2.Length > 0).ToList();

        var preview = CommandRun.Of("log", "export", "--log", log, "--preview", "--json", "--release", "habitat").Output;

        var listed = JsonDocument.Parse(preview).RootElement.GetProperty("fields").EnumerateArray()
            .Select(entry => (entry.GetProperty("field").GetString()!, entry.GetProperty("published").GetString()!)).ToList();
        listed.Should().Contain(written);
        written.Should().Contain(("habitat", "alkaline fen"));
    }

    [Fact]
    public void An_export_says_that_others_of_a_session_are_coarser_because_of_one()
    {
        var log = Log("Withheld");
        CommandRun.Of("log", "subject", Session(log), "--log", log, "--name", "Carabus").ExitCode.Should().Be(0);

        var run = CommandRun.Of("log", "export", "--log", log, "--geojson", _folder.File("fen.geojson"));

        run.Error.Should().Contain("1 subject is not sensitive but told as coarsely as ").And.Contain(" Dolomedes (").And.Contain("--leave-out-sensitive");
        CommandRun.Of("log", "export", "--log", log, "--leave-out-sensitive", "--geojson", _folder.File("open.geojson")).ExitCode.Should().Be(0);
        File.ReadAllText(_folder.File("open.geojson")).Should().Contain("52.61234").And.Contain("Carabus").And.NotContain("Dolomedes");
    }

    [Theory]
    [InlineData("habitats", "'habitats' names no field")]
    [InlineData("habitat=nobody", "The log has no record of this name")]
    [InlineData("habitat=Dolomedes", "This is a field of the session")]
    public void A_release_that_is_not_understood_is_refused_and_nothing_leaves(string release, string said)
    {
        var run = CommandRun.Of("log", "export", "--log", Log("Tenth"), "--csv", _folder.File("fen.csv"), "--release", release);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain(said);
        File.Exists(_folder.File("fen.csv")).Should().BeFalse();
    }

    [Fact]
    public void An_archive_of_a_sensitive_log_taken_into_it_again_changes_nothing()
    {
        var log = Log("Tenth");
        CommandRun.Of("log", "export", "--log", log, "--archive", _folder.File("fen.zip")).ExitCode.Should().Be(0);
        var before = CommandRun.Of("log", "list", "--log", log, "--json").Output;

        var run = CommandRun.Of("log", "import", _folder.File("fen.zip"), "--log", log);

        run.Error.Should().Contain("1 subject is a coarse copy");
        CommandRun.Of("log", "list", "--log", log, "--json").Output.Should().Be(before);
    }

    /// <summary>What a person can type into the next command, not 45 characters.</summary>
    [Fact]
    public void A_preview_calls_records_by_their_short_identifiers_and_names()
    {
        var log = Log("Tenth");
        var listed = JsonDocument.Parse(CommandRun.Of("log", "list", "--log", log, "--json").Output).RootElement;
        var (session, subject) = (listed.GetProperty("sessions")[0].GetProperty("shortId").GetString(), listed.GetProperty("subjects")[0].GetProperty("shortId").GetString());

        var preview = CommandRun.Of("log", "export", "--log", log, "--preview", "--release", "habitat=" + session);

        preview.Output.Should().MatchRegex($@"^session {session} .*: sensitive").And.MatchRegex($@"\n  subject {subject} Dolomedes \(").And.Contain("published habitat");
    }

    /// <summary>The habitat with a flipped letter must not leave as if nothing were wrong.</summary>
    [Theory]
    [InlineData("export", "--csv")]
    [InlineData("list", "--csv")]
    public void A_damaged_row_is_told_by_every_command_that_gives_the_log_out(string command, string form)
    {
        var log = Log("Open");
        using (var connection = new SqliteConnection($"Data Source={log};Pooling=False"))
        {
            connection.Open();
            using var flip = connection.CreateCommand();
            flip.CommandText = "UPDATE session SET habitat = 'amkaline fen'";
            flip.ExecuteNonQuery();
        }

        var run = CommandRun.Of(["log", command, "--log", log, form, .. command == "export" ? new[] { _folder.File("fen.csv") } : []]);

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("damaged: row 1 of session").And.Contain("log rescue");
    }

    [Fact]
    public void An_archive_that_cannot_be_taken_in_starts_no_log()
    {
        File.WriteAllText(_folder.File("no.zip"), "no archive");

        CommandRun.Of("log", "import", _folder.File("no.zip"), "--log", _folder.File("new.log")).ExitCode.Should().Be(3);
        CommandRun.Of("log", "import", _folder.File("missing.zip"), "--log", _folder.File("new.log")).ExitCode.Should().Be(3);

        File.Exists(_folder.File("new.log")).Should().BeFalse();
    }

    [Fact]
    public void An_import_says_that_the_account_of_what_was_withheld_is_not_kept()
    {
        CommandRun.Of("log", "export", "--log", Log("Tenth"), "--archive", _folder.File("fen.zip")).ExitCode.Should().Be(0);

        var run = CommandRun.Of("log", "import", _folder.File("fen.zip"), "--log", _folder.File("colleague.log"));

        run.ExitCode.Should().Be(0);
        run.Error.Should().Contain("1 record says that something of it was withheld");
        CommandRun.Of("log", "import", _folder.File("fen.zip"), "--log", _folder.File("colleague.log")).Error.Should().NotContain("withheld");
    }

    private static string Session(string log) =>
        JsonDocument.Parse(CommandRun.Of("log", "list", "--log", log, "--json").Output).RootElement.GetProperty("sessions")[0].GetProperty("id").GetString()!;

    private string Log(string sensitivity)
    {
        var log = _folder.File("field.log");
        CommandRun.Of(
            "log", "session", "--log", log, "--start", "2026-05-09T14:00:00+01:00", "--latitude", "52.61234", "--longitude", "-21.54321",
            "--habitat", "alkaline fen", "--locality", "Wisplow Fen").ExitCode.Should().Be(0);
        CommandRun.Of("log", "subject", Session(log), "--log", log, "--name", "Dolomedes", "--sensitivity", sensitivity).ExitCode.Should().Be(0);
        return log;
    }
}
