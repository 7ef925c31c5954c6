using System.Text.Json;
using Microsoft.Data.Sqlite;
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

    /// <summary>A figure is no word, though it stands for one inside the program.</summary>
    [Theory]
    [InlineData("0")]
    [InlineData("1")]
    [InlineData("99")]
    public void A_sensitivity_is_a_word_and_no_figure(string written)
    {
        Log("session");

        var run = Log("subject", "--name", "Dolomedes", "--sensitivity", written);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("It takes open, hundredth, tenth or withheld");
        Log("list").Output.Should().NotContain("Dolomedes");
    }

    /// <summary>Half the world writes 52,6; read as a mark between thousands it is ten degrees for one.</summary>
    [Theory]
    [InlineData("session", "--latitude", "1,5", "--longitude", "2")]
    [InlineData("session", "--longitude", "2,5", "--latitude", "2")]
    [InlineData("session", "--elevation-m", "12,5")]
    [InlineData("session", "--uncertainty-m", "2,5")]
    [InlineData("measure", "last", "body length", "18,5")]
    [InlineData("measure", "last", "body length", "18.5", "--accuracy", "0,2")]
    public void A_number_with_a_comma_is_refused_with_the_form_that_works(params string[] line)
    {
        Log("session", "--name", "fen");
        Log("subject", "--name", "Dolomedes");
        var before = Log("list", "--json").Output;

        var run = Log(line);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("has a comma; write ");
        Log("list", "--json").Output.Should().Be(before);
    }

    [Theory]
    [InlineData("52°36'44\"")]
    [InlineData("1,234.5")]
    [InlineData("NaN")]
    public void A_latitude_in_another_form_is_refused_with_one_that_works(string written) =>
        Log("session", "--latitude", written, "--longitude", "2").Error.Should().Contain("is not a number; write for example 52.612");

    [Fact]
    public void A_second_hold_tells_what_it_takes_the_place_of()
    {
        Log("session", "--name", "fen");
        Log("subject", "--name", "Dolomedes", "--held-from", "2026-05-09T13:40", "--held-until", "2026-05-09T13:50");

        Log("hold", "start", "last", "--limit", "10 min").Error.Should().Contain("It was held before, 2026-05-09 13:40 to 13:50: the history keeps that");
        Log("hold", "status").Error.Should().NotContain("No animal is held");
        Log("undo");

        Log("hold", "status").Error.Should().Contain("No animal is held");
    }

    [Fact]
    public void Whatever_was_recorded_can_be_set_right()
    {
        Log("session", "--name", "fen");
        Log("subject", "--name", "Dolomedes", "--held-from", "2026-05-09T13:40", "--held-until", "2026-05-09T13:50");
        Log("measure", "last", "body lenght", "185", "--unit", "mm");
        Log("frame", "last", Picture("spider.png"));

        Log("edit", "measurement", "last", "--type", "body length", "--value", "18.5").ExitCode.Should().Be(0);
        Log("edit", "subject", "last", "--released", "false", "--limit", "5 min").ExitCode.Should().Be(0);
        Log("edit", "frame", "last", "--taken", "2026-05-09T13:45").ExitCode.Should().Be(0);

        Log("list").Output.Should().Contain("body length 18.5 mm").And.Contain("spider.png  2026-05-09 13:45");
        Log("history", "Dolomedes").Output.Should().Contain("released nothing -> \"0\"").And.Contain("hold limit nothing -> \"300\"");
        Log("edit", "measurement", "last", "--clear", "value").ExitCode.Should().Be(2, "a measurement has a value");
    }

    [Fact]
    public void A_sensitive_subject_is_seen_in_the_list()
    {
        Log("session", "--name", "evening", "--locality", "fen");
        Log("subject", "--name", "Dolomedes", "--sensitivity", "tenth");

        Log("list").Output.Should().Contain("evening, fen").And.Contain("Dolomedes (place: tenth)");
        JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("subjects")[0].GetProperty("sensitivity").GetString().Should().Be("tenth");
    }

    [Fact]
    public void A_field_cannot_be_given_and_emptied_at_once()
    {
        Log("session", "--locality", "fen");

        var run = Log("edit", "session", "last", "--locality", "heath", "--clear", "locality");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("--locality and --clear locality");
        Log("list").Output.Should().Contain("fen");
    }

    [Fact]
    public void A_pixel_size_is_recorded_as_it_was_typed()
    {
        Log("session");
        Log("subject", "--name", "Dolomedes");

        Log("frame", "last", Picture("spider.png"), "--pixel-size", "5 um");

        Log("history", "last").Output.Should().Contain("micrometres per pixel \"5\"");
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

    [Theory]
    [InlineData("UPDATE subject SET sensitivity = 'Secret'", "sensitivity holds 'Secret'")]
    [InlineData("DROP TABLE measurement", "no such table")]
    [InlineData("PRAGMA user_version = -3", "version -3")]
    [InlineData("UPDATE session SET start = 'yesterday'", "'yesterday', which is no date")]
    public void A_damaged_log_is_told_in_a_sentence_that_names_the_rescue_and_is_rescued(string damage, string told)
    {
        Log("session", "--name", "fen");
        Log("subject", "--name", "Dolomedes", "--sensitivity", "Tenth");
        Log("measure", "last", "body length", "18.5");
        Sql(damage);

        foreach (var run in new[] { Log("list"), Log("export", "--csv", _folder.File("fen.csv")) })
        {
            run.ExitCode.Should().Be(3);
            run.Error.Should().Contain(told).And.Contain("log rescue");
        }

        var rescue = CommandRun.Of("log", "rescue", _folder.File("field.log"), _folder.File("new.log"));
        rescue.Output.Should().Contain("1 session, 1 subject, 1 measurement");
        CommandRun.Of("log", "list", "--log", _folder.File("new.log")).Should().BeEquivalentTo(new { ExitCode = 0, Error = "" });
    }

    [Fact]
    public void A_log_of_a_later_program_is_refused_by_its_version()
    {
        Log("session");
        Sql("PRAGMA user_version = 77");

        foreach (var command in new[] { "list", "session" })
        {
            Log(command).Should().Match<CommandRun>(run => run.ExitCode == 3 && run.Error.Contains("version 77"));
        }
    }

    [Fact]
    public void What_is_no_log_at_all_is_rescued_into_nothing()
    {
        File.WriteAllText(_folder.File("field.log"), new string('x', 9000));

        var run = CommandRun.Of("log", "rescue", _folder.File("field.log"), _folder.File("new.log"));

        run.ExitCode.Should().Be(3);
        File.Exists(_folder.File("new.log")).Should().BeFalse();
    }

    [Fact]
    public void Pictures_of_a_folder_are_matched_by_time_shown_first_and_recorded_as_one_change()
    {
        Log("session", "--name", "fen");
        var spider = Log("subject", "--name", "Dolomedes").Output.Trim();
        _clock.Now = _clock.Now.AddMinutes(10);
        Log("hold", "start", "last", "--limit", "10 min");
        _clock.Now = _clock.Now.AddMinutes(8);
        Log("hold", "stop");
        Directory.CreateDirectory(_folder.File("card"));
        TakenJpeg.Write(_folder.File("card/a.jpg"), new DateTime(2026, 5, 9, 14, 12, 0));
        TakenJpeg.Write(_folder.File("card/b.jpg"), new DateTime(2026, 5, 9, 14, 40, 0));
        Picture("card/c.png");
        File.WriteAllText(_folder.File("card/d.jpg"), "no picture");

        var preview = Log("frame", _folder.File("card"), "--preview");
        preview.Output.Should().MatchRegex($@"a.jpg +2026-05-09 14:12:00 +{spider} Dolomedes +in hand").And.MatchRegex($@"b.jpg .*22 min after {spider}").And.Contain("the file has no time");
        preview.Error.Should().Contain("d.jpg");
        Log("list").Output.Should().NotContain("a.jpg");

        var run = Log("frame", _folder.File("card"), "--caption", "from above");
        run.Output.Should().Be(preview.Output);
        run.Error.Should().Contain("1 frame recorded, 2 not matched");
        Log("list").Output.Should().Contain("a.jpg").And.NotContain("b.jpg");
        Log("undo");
        Log("list").Output.Should().NotContain("a.jpg");
    }

    [Fact]
    public void A_camera_an_hour_ahead_is_set_right_by_a_picture_of_a_watch()
    {
        Log("session");
        Log("subject", "--name", "Dolomedes", "--held-from", "2026-05-09T13:00", "--held-until", "2026-05-09T13:10");
        TakenJpeg.Write(_folder.File("watch.jpg"), new DateTime(2026, 5, 9, 14, 1, 40));
        TakenJpeg.Write(_folder.File("a.jpg"), new DateTime(2026, 5, 9, 14, 6, 40));

        var run = Log("frame", _folder.File("a.jpg"), "--camera-clock", _folder.File("watch.jpg") + "=2026-05-09T13:00:00");

        run.Error.Should().Contain("3700 s ahead");
        run.Output.Should().Contain("2026-05-09 13:05:00");
        Log("frame", _folder.File("a.jpg"), "--camera-ahead", "3700 s").Output.Should().Contain("2026-05-09 13:05:00");
        Log("frame", _folder.File("a.jpg")).ExitCode.Should().Be(0);
        JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("frames")[0].GetProperty("taken").GetString().Should().Be("2026-05-09T13:05:00+00:00");
    }

    [Fact]
    public void The_scale_of_a_scaled_copy_comes_into_the_log_by_its_sidecar()
    {
        Log("session");
        Log("subject", "--name", "Dolomedes");
        var original = Picture("spider.png");
        CommandRun.Of("scale", original, "--pixel-size", "5 um", "--out", _folder.File("scaled")).ExitCode.Should().Be(0);

        Log("frame", "last", original, "--sidecars", _folder.File("scaled")).ExitCode.Should().Be(0);

        JsonDocument.Parse(Log("list", "--json").Output).RootElement.GetProperty("frames")[0].GetProperty("pixelSizeUm").GetDouble().Should().Be(5);
    }

    private void Sql(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={_folder.File("field.log")};Pooling=False;Foreign Keys=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private string Picture(string name)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(400, 300, SKColorType.Rgba8888, SKAlphaType.Opaque));
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 95);
        File.WriteAllBytes(_folder.File(name), data.ToArray());
        return _folder.File(name);
    }

    private CommandRun Log(params string[] args) => CommandRun.At(_clock, ["log", .. args, "--log", _folder.File("field.log")]);

    [Fact]
    public void A_rescue_with_a_log_of_its_own_is_told_the_form_that_works()
    {
        var run = CommandRun.Of("log", "rescue", "a.log", "b.log", "--log", "c.log");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("studiokit log rescue field.log field-rescued.log");
    }
}
