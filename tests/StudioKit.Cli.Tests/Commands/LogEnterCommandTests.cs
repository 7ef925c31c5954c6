using StudioKit.Field.Log.Rows;
using UglyToad.PdfPig;

namespace StudioKit.Cli.Tests.Commands;

public sealed class LogEnterCommandTests : IDisposable
{
    private const string Row = "date,place,time,animal,frames\n2026-05-09,Wisplow Fen,14:05,raft spider,0412-0414\n";
    private readonly TemporaryFolder _folder = new();

    private string Log => _folder.File("field.log");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_rows_that_the_help_shows_can_be_entered()
    {
        var help = CommandRun.Once("log", "enter", "--help").Output.Split('\n').Select(line => line.Trim()).ToList();
        var rows = help.Skip(help.FindIndex(line => line.StartsWith("date,", StringComparison.Ordinal))).TakeWhile(line => line.Contains(',')).ToList();
        rows.Should().HaveCount(4);

        var run = CommandRun.Of("log", "enter", Rows(string.Join('\n', rows)), "--log", Log, "--kit", Repository.Kit("fen-edge.yaml"));

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("new session 2026-05-09 Wisplow Fen").And.Contain("2 subjects, 18 pictures");
    }

    [Fact]
    public void Rows_typed_in_are_recorded_and_taken_back_in_one_go()
    {
        CommandRun.With(Row, "log", "enter", "--log", Log).ExitCode.Should().Be(0);
        CommandRun.Of("log", "list", "--log", Log).Output.Should().Contain("raft spider").And.Contain("0413.jpg");

        CommandRun.Of("log", "undo", "--log", Log).ExitCode.Should().Be(0);

        CommandRun.Of("log", "list", "--log", Log).Output.Should().BeEmpty();
    }

    [Fact]
    public void A_preview_records_nothing_and_begins_no_log()
    {
        var run = CommandRun.Of("log", "enter", Rows(Row), "--log", Log, "--preview");

        run.ExitCode.Should().Be(0);
        run.Output.Should().Contain("0412.jpg to 0414.jpg, 3 pictures");
        File.Exists(Log).Should().BeFalse();
    }

    [Fact]
    public void One_bad_row_keeps_all_of_them_out()
    {
        var run = CommandRun.Of("log", "enter", Rows(Row + ",,noon,moth,0415\n"), "--log", Log);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("rows.csv(3,3): FLD492: time: 'noon' is no time.");
        File.Exists(Log).Should().BeFalse();
    }

    /// <summary>A spreadsheet's own 8-bit text: 0xE4 is ä in ISO 8859-1, and no UTF-8 (RFC 3629).</summary>
    [Fact]
    public void Rows_in_another_coding_than_UTF_8_are_refused_before_a_letter_is_lost()
    {
        File.WriteAllBytes(_folder.File("rows.csv"), [.. "date,animal\n2026-05-09,K"u8, 0xE4, .. "fer\n"u8]);

        var run = CommandRun.Of("log", "enter", _folder.File("rows.csv"), "--log", Log);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("rows.csv(2)").And.Contain("UTF-8");
        File.Exists(Log).Should().BeFalse();
    }

    [Theory]
    [InlineData("date;animal;frames\n2026-05-09;bee;0412\n", "semicolons")]
    [InlineData("14:05;bee;1;A;A;0412\n", "semicolons")]
    [InlineData("date\tanimal\tframes\n2026-05-09\tbee\t0412\n", "tabs")]
    public void Rows_parted_by_something_else_than_commas_are_told_apart_from_wrong_rows(string rows, string sign)
    {
        var run = CommandRun.Of("log", "enter", Rows(rows), "--log", Log);

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain($"parted by {sign}").And.Contain("comma").And.NotContain("no date is given");
    }

    [Fact]
    public void A_set_up_from_paper_stays_when_the_picture_is_read_with_the_kit()
    {
        Directory.CreateDirectory(_folder.File("card"));
        TakenJpeg.Write(_folder.File("card/0412.jpg"), new DateTime(2026, 5, 9, 14, 6, 0));
        CommandRun.Of("log", "enter", Rows("date,time,animal,framing,set-up,frames\n2026-05-09,14:05,raft spider,B,A,0412\n"), "--log", Log, "--kit", Repository.Kit("fen-edge.yaml")).ExitCode.Should().Be(0);

        var run = CommandRun.Of("log", "frame", _folder.File("card"), "--log", Log, "--kit", Repository.Kit("fen-edge.yaml"));

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("2026-05-09 14:05:00", "the table shows what is recorded").And.Contain("white");
    }

    [Fact]
    public void The_log_written_as_rows_enters_again_and_the_same_rows_twice_are_refused()
    {
        CommandRun.Of("log", "enter", Rows(Row), "--log", Log, "--pictures", "fen-####.jpg").ExitCode.Should().Be(0);
        var written = CommandRun.Of("log", "list", "--log", Log, "--csv").Output;

        CommandRun.With(written, "log", "enter", "-", "--log", Log).Error.Should().Contain("recorded already");
        CommandRun.With(written, "log", "enter", "-", "--log", _folder.File("other.log")).ExitCode.Should().Be(0);

        CommandRun.Of("log", "list", "--log", _folder.File("other.log"), "--csv").Output.Should().Be(written);
    }

    [Fact]
    public void The_template_is_the_head_that_rows_are_read_by() =>
        CommandRun.Of("log", "enter", "--template").Output.Trim().Split(',').Should().Equal(RowColumns.All);

    [Theory]
    [InlineData("no-number.jpg")]
    [InlineData("../####.jpg")]
    public void A_pattern_that_is_none_is_refused(string pattern) =>
        CommandRun.Of("log", "enter", Rows(Row), "--log", Log, "--pictures", pattern).Error.Should().Contain("fen-####.jpg");

    [Fact]
    public void The_boxes_of_the_printed_sheet_are_the_columns_that_rows_without_a_head_are_read_by()
    {
        CommandRun.Of("sheets", Repository.Kit("fen-edge.yaml"), "--out", _folder.File("sheets")).ExitCode.Should().BeOneOf(0, 1);
        using var sheet = PdfDocument.Open(File.ReadAllBytes(_folder.File("sheets/paper-log.pdf")));

        foreach (var page in sheet.GetPages())
        {
            var words = page.GetWords().ToList();
            var line = words.Last(word => word.Text == "animal").BoundingBox.Bottom;
            words.Where(word => Math.Abs(word.BoundingBox.Bottom - line) < 2).OrderBy(word => word.BoundingBox.Left).Select(word => word.Text).Should().Equal(RowColumns.OnPaper);
        }

        sheet.GetPage(2).Text.Should().Contain("reed 55 at 1:2").And.Contain("white");
    }

    private string Rows(string text)
    {
        File.WriteAllText(_folder.File("rows.csv"), text);
        return _folder.File("rows.csv");
    }
}
