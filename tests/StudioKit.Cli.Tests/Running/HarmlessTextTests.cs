using StudioKit.Cli.Running;

namespace StudioKit.Cli.Tests.Running;

public sealed class HarmlessTextTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>Controls of ISO/IEC 6429, of Unicode Standard Annex 9, a separator, a mark that is not seen, and a tag beyond the first plane.</summary>
    [Theory]
    [InlineData("a\u001B[31mb", "a\\u001B[31mb")]
    [InlineData("a\rb", "a\\u000Db")]
    [InlineData("a\r\r\nb\r", "a\\u000D\r\nb\\u000D")]
    [InlineData("a\u009B2Jb", "a\\u009B2Jb")]
    [InlineData("a\u202Eb", "a\\u202Eb")]
    [InlineData("a\u2066b", "a\\u2066b")]
    [InlineData("a\u2028b", "a\\u2028b")]
    [InlineData("a\uFEFFb", "a\\uFEFFb")]
    [InlineData("a\U000E0041b", "a\\uDB40\\uDC41b")]
    public void What_would_steer_a_terminal_is_shown(string text, string shown) => HarmlessText.Of(text).Should().Be(shown);

    /// <summary>
    /// The joiners are letters of Persian and Hindi; the last is a beetle's name with marks, the rest what tables are made of. Lines of comma-separated text end as RFC 4180 has it.
    /// </summary>
    [Theory]
    [InlineData("line\n\tindented")]
    [InlineData("animal,count\r\nsundew,3\r\n")]
    [InlineData("می\u200Cخواهم क्\u200Dष")]
    [InlineData("│ 180 µm × ½ ─ 🦋 Ölkäferin à côtes")]
    public void What_is_only_written_stays(string text) => HarmlessText.Of(text).Should().Be(text);

    [Fact]
    public void A_letter_that_comes_in_two_halves_stays_whole()
    {
        using var output = new StringWriter();
        using var writer = new HarmlessWriter(output);

        foreach (var unit in "a🦋\u202E")
        {
            writer.Write(unit);
        }

        output.ToString().Should().Be("a🦋\\u202E");
    }

    [Theory]
    [InlineData()]
    [InlineData("--json")]
    [InlineData("--csv")]
    public void A_label_of_a_cut_list_cannot_steer_the_terminal(params string[] more)
    {
        File.WriteAllText(_folder.File("pieces.csv"), "label,length,count\na\u001B[31m\u202Eb,300 mm,2\n");
        File.WriteAllText(_folder.File("stock.csv"), "length,price,count\n1000 mm,3,\n");

        var run = CommandRun.Of(["cut", "--pieces", _folder.File("pieces.csv"), "--stock", _folder.File("stock.csv"), .. more]);

        run.ExitCode.Should().Be(0, run.Error);
        run.Output.Should().Contain("\\u202Eb").And.NotContainAny("\u001B", "\u202E");
    }

    [Fact]
    public void An_argument_of_the_command_line_cannot_steer_the_terminal() =>
        CommandRun.Of("check", "a\u202Eb\u001B[2J.yaml").Error.Should().Contain("\\u202E").And.NotContainAny("\u001B", "\u202E");
}
