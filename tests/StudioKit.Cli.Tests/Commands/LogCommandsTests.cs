using System.Text.Json;
using SkiaSharp;

namespace StudioKit.Cli.Tests.Commands;

public sealed class LogCommandsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly MovedClock _clock = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_session_of_the_day_is_taken_where_none_is_named_and_the_command_says_which()
    {
        var session = Log("session", "--name", "Wisplow Fen").Output.Trim();

        var run = Log("subject", "--name", "Dolomedes");

        run.ExitCode.Should().Be(0);
        run.Error.Should().Contain($"session of the day: {session} Wisplow Fen");
        Log("list").Output.Should().MatchRegex($@"{session}  .*\n  {run.Output.Trim()}  Dolomedes");
    }

    [Fact]
    public void Without_a_session_of_the_day_a_subject_goes_into_none()
    {
        Log("session", "--start", "2026-04-01", "--name", "long ago");

        var run = Log("subject", "--name", "Dolomedes");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("no session of today");
        Log("subject", "last", "--name", "Dolomedes").ExitCode.Should().Be(0);
    }

    [Fact]
    public void A_name_that_two_records_bear_lists_both()
    {
        Log("session");
        var ids = new[] { Log("subject", "--name", "Dolomedes").Output.Trim(), Log("subject", "--name", "Dolomedes").Output.Trim() };

        var run = Log("measure", "dolomedes", "body length", "18.5");

        run.ExitCode.Should().Be(2);
        ids.Should().AllSatisfy(id => run.Error.Should().Contain(id));
    }

    [Fact]
    public void A_record_is_called_by_its_short_identifier_its_full_one_its_name_or_last()
    {
        Log("session");
        var shown = Log("subject", "--name", "Dolomedes").Output.Trim();
        var full = JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("subjects")[0].GetProperty("id").GetString()!;

        foreach (var name in new[] { shown, shown.ToUpperInvariant(), full, "Dolomedes", "last" })
        {
            Log("measure", name, "body length", "18.5").ExitCode.Should().Be(0, name);
        }

        shown.Length.Should().BeLessThan(5);
    }

    [Fact]
    public void A_day_without_an_hour_stays_a_day()
    {
        Log("session", "--start", "2026-04-01", "--end", "2026-04-02");

        var session = JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("sessions")[0];

        (session.GetProperty("start").GetString(), session.GetProperty("end").GetString()).Should().Be(("2026-04-01", "2026-04-02"));
    }

    [Fact]
    public void A_frame_logged_again_keeps_what_is_not_given_anew()
    {
        Log("session");
        Log("subject", "--name", "Dolomedes");
        var picture = Picture("spider.png");
        Log("frame", "last", picture, "--caption", "from above", "--creator", "A. Sedge", "--licence", "CC0", "--pixel-size", "5 um").ExitCode.Should().Be(0);

        Log("frame", "last", picture, "--caption", "from the side").ExitCode.Should().Be(0);

        var frame = JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("frames")[0];
        frame.GetProperty("caption").GetString().Should().Be("from the side");
        frame.GetProperty("pixelSizeUm").GetDouble().Should().Be(5);
        Log("export", "--archive", _folder.File("fen.zip")).ExitCode.Should().Be(0);
        Log("history", "last").Output.Should().Contain("caption \"from above\" -> \"from the side\"").And.NotContain("creator \"A. Sedge\" ->");
    }

    [Fact]
    public void A_field_is_emptied_only_where_that_is_said()
    {
        Log("session", "--remarks", "light rain", "--latitude", "52.6", "--longitude", "-21.5", "--name", "fen");

        Log("edit", "session", "fen", "--clear", "latitude", "longitude").ExitCode.Should().Be(0);

        var session = JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("sessions")[0];
        session.GetProperty("latitudeDeg").ValueKind.Should().Be(JsonValueKind.Null);
        session.GetProperty("name").GetString().Should().Be("fen");
        Log("history").Output.Should().Contain("latitude \"52.6\" -> nothing");
    }

    [Fact]
    public void A_session_with_subjects_is_taken_out_with_them_only_where_that_is_said()
    {
        var session = Log("session", "--name", "fen").Output.Trim();
        Log("subject", "--name", "Dolomedes");
        Log("subject", "--name", "Pirata");

        var refused = Log("delete", session);
        refused.ExitCode.Should().Be(2);
        refused.Error.Should().Contain("2 subjects").And.Contain("--with-all");

        Log("delete", session, "--with-all").Output.Should().Contain("with 2 subjects");
        Log("list").Output.Should().BeEmpty();
        Log("undo").ExitCode.Should().Be(0);
        Log("list").Output.Should().Contain(session).And.Contain("Pirata");
        Log("redo").ExitCode.Should().Be(0);
        Log("list").Output.Should().BeEmpty();
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData(":memory:")]
    [InlineData("file:field.log?mode=memory")]
    public void A_log_that_would_be_no_file_is_refused(string name)
    {
        foreach (var command in new[] { "session", "list", "export" })
        {
            var run = CommandRun.Of("log", command, "--log", name);

            run.ExitCode.Should().Be(2);
            run.Error.Should().Contain("The log is a file on the disk");
        }
    }

    [Fact]
    public void A_folder_is_no_log() => CommandRun.Of("log", "session", "--log", _folder.Path).Error.Should().Contain("This is a folder");

    [Theory]
    [InlineData("list")]
    [InlineData("export")]
    [InlineData("history")]
    [InlineData("undo")]
    [InlineData("subject")]
    public void A_mistyped_log_is_not_started_by_a_command_that_needs_one(string command)
    {
        Log("session");

        var run = CommandRun.Of("log", command, "--log", _folder.File("feild.log"));

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("There is no such log.").And.Contain("field.log");
        File.Exists(_folder.File("feild.log")).Should().BeFalse();
    }

    private string Picture(string name)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(40, 30, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 95);
        File.WriteAllBytes(_folder.File(name), data.ToArray());
        return _folder.File(name);
    }

    private CommandRun Log(params string[] args) => CommandRun.At(_clock, ["log", .. args, "--log", _folder.File("field.log")]);
}
