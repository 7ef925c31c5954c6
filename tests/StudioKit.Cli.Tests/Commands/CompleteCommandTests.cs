using System.Text;
using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

/// <summary>What an editor's plug-in gets at a place of a kit, against what the kit's keys are in the reference and what the text itself says.</summary>
public sealed class CompleteCommandTests : IDisposable
{
    private const string Fen = "kit: Fen\npanel:\n  wid\n";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_candidate_is_a_line_with_what_to_insert_its_kind_and_its_help()
    {
        var run = CommandRun.With(Fen, "complete", "-", "--at", "3:6");

        run.ExitCode.Should().Be(0);
        run.Error.Should().BeEmpty();
        var fields = run.Output.TrimEnd().Split('\t');
        fields.Should().HaveCount(3);
        fields[..2].Should().Equal("width: ", "key");
        fields[2].Should().NotBeEmpty();
    }

    [Fact]
    public void Line_ends_of_what_is_inserted_are_written_out_so_that_a_candidate_stays_on_its_line() =>
        CommandRun.With("kit: Fen\ncam", "complete", "-", "--at", "2:4").Output.Should().StartWith("camera:\\n  \tkey\t");

    [Theory]
    [InlineData("panel:\n  width: 60", "2:12", " cm\tunit")]
    [InlineData("panel:\n  skirts: ", "2:11", "true\tword")]
    [InlineData("lenses:\n  - name: reed\nset-ups:\n  - lenses: [", "4:14", "reed\tname")]
    [InlineData("camera: sensor-36", "1:18", "sensor-36x24\tpart\t")]
    public void Units_words_names_and_parts_come_where_they_may_stand(string text, string at, string line) =>
        CommandRun.With(text, "complete", "-", "--at", at).Output.Split('\n').Should().Contain(found => found.StartsWith(line, StringComparison.Ordinal));

    [Fact]
    public void Json_tells_the_stretch_that_a_candidate_takes_the_place_of()
    {
        var run = CommandRun.With(Fen, "complete", "-", "--at", "3:4", "--json");

        var candidate = JsonDocument.Parse(run.Output).RootElement.GetProperty("candidates")[0];
        candidate.GetProperty("label").GetString().Should().Be("width");
        candidate.GetProperty("insert").GetString().Should().Be("width: ");
        candidate.GetProperty("kind").GetString().Should().Be("key");
        new[] { "fromLine", "fromColumn", "toLine", "toColumn" }.Select(key => candidate.GetProperty(key).GetInt32()).Should().Equal(3, 3, 3, 6);
    }

    [Fact]
    public void A_kit_without_a_required_value_is_sound_again_with_the_first_word_that_is_offered_for_it()
    {
        var text = File.ReadAllText(Repository.Kit("fen-edge.yaml")).Replace("kind: white-background", "kind: ", StringComparison.Ordinal);
        var line = text.Split('\n').ToList().FindIndex(line => line.EndsWith("kind: ", StringComparison.Ordinal));
        CommandRun.With(text, "check", "-").ExitCode.Should().Be(2);

        var word = CommandRun.With(text, "complete", "-", "--at", FormattableString.Invariant($"{line + 1}:{text.Split('\n')[line].Length + 1}")).Output.Split('\t')[0];

        CommandRun.With(text.Replace("kind: \n", $"kind: {word}\n", StringComparison.Ordinal), "check", "-").ExitCode.Should().Be(0);
    }

    [Theory]
    [InlineData("kit: Fen\r\npanel:\r\n  wid\r\n")]
    [InlineData("\uFEFFkit: Fen\npanel:\n  wid\n")]
    [InlineData("kit: [Fen\npanel:\n  wid")]
    [InlineData("kit: \"Fen\npanel:\n  wid\n: : :\n- {")]
    public void Windows_line_ends_a_byte_order_mark_and_broken_yaml_change_nothing(string text) =>
        CommandRun.With(text, "complete", "-", "--at", "3:6").Output.Should().StartWith("width: \tkey\t");

    [Fact]
    public void New_lines_end_as_the_kits_own_do() =>
        CommandRun.With("kit: Fen\r\ncam", "complete", "-", "--at", "2:4", "--json").Output.Should().Contain("\"insert\": \"camera:\\r\\n  \"");

    [Fact]
    public void A_tab_is_one_column() => CommandRun.With("panel:\n\twid", "complete", "-", "--at", "2:5").Output.Should().StartWith("width: \tkey\t");

    [Theory]
    [InlineData("code-units", 16)]
    [InlineData("characters", 15)]
    [InlineData("bytes", 18)]
    public void Columns_behind_a_moth_are_counted_as_the_editor_counts_them(string unit, int column)
    {
        var run = CommandRun.With("panel: {x: \U0001F98B, wid", "complete", "-", "--at", FormattableString.Invariant($"1:{column}"), "--columns", unit, "--json");

        run.ExitCode.Should().Be(0);
        var candidates = JsonDocument.Parse(run.Output).RootElement.GetProperty("candidates");
        candidates.EnumerateArray().Select(candidate => candidate.GetProperty("label").GetString()).Should().Contain("width");
        candidates[0].GetProperty("toColumn").GetInt32().Should().Be(column + 3, "the word that is begun runs to the line's end");
    }

    [Theory]
    [InlineData("3")]
    [InlineData("3:")]
    [InlineData(":3")]
    [InlineData("0:1")]
    [InlineData("1:0")]
    [InlineData("3:6:1")]
    [InlineData("a:b")]
    [InlineData("1.5:2")]
    [InlineData("99999999999:1")]
    [InlineData("-1:2")]
    [InlineData(" 3:6")]
    public void What_is_no_place_is_refused_with_one_that_is(string at)
    {
        var run = CommandRun.With(Fen, "complete", "-", $"--at={at}");

        run.ExitCode.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain($"'{at}' is no place").And.Contain("12:9");
    }

    [Theory]
    [InlineData("5:1", "line 5 is past the end; the kit has 4 lines")]
    [InlineData("3:7", "column 7 is past the end of line 3, whose last column is 6")]
    [InlineData("2147483647:2147483647", "line 2147483647 is past the end")]
    public void A_place_outside_the_kit_is_told_with_how_far_the_kit_goes(string at, string told)
    {
        var run = CommandRun.With(Fen, "complete", "-", "--at", at);

        run.ExitCode.Should().Be(2);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain(told);
    }

    [Fact]
    public void A_column_within_a_character_is_told_as_such() =>
        CommandRun.With("kit: \U0001F98B", "complete", "-", "--at", "1:7").Should().Match<CommandRun>(run => run.ExitCode == 2 && run.Error.Contains("column 7 of line 1 is within a character"));

    [Fact]
    public void An_empty_kit_begins_with_its_first_key() => CommandRun.With("", "complete", "-", "--at", "1:1").Output.Should().StartWith("kit: \tkey\t");

    [Fact]
    public void Where_nothing_may_stand_it_is_said_on_the_error_stream_alone()
    {
        var run = CommandRun.With("kit: Fen # a fen", "complete", "-", "--at", "1:12");

        run.Should().Match<CommandRun>(found => found.ExitCode == 0 && found.Output.Length == 0);
        run.Error.Should().Contain("nothing is known");
    }

    [Fact]
    public void A_file_larger_than_any_kit_or_no_text_at_all_is_told_by_the_readers_own_codes()
    {
        var (large, picture) = (_folder.File("large.yaml"), _folder.File("picture.yaml"));
        File.WriteAllText(large, new string('#', 5_000_000));
        File.WriteAllBytes(picture, [0xFF, 0xD8, 0xFF, 0xE0]);

        CommandRun.Of("complete", large, "--at", "1:1", "--json").Should().Match<CommandRun>(run => run.ExitCode == 2 && run.Output.Contains("KIT012"));
        CommandRun.Of("complete", picture, "--at", "1:1").Should().Match<CommandRun>(run => run.ExitCode == 2 && run.Error.Contains("KIT013"));
        CommandRun.Of("complete", _folder.File("none.yaml"), "--at", "1:1").ExitCode.Should().Be(3);
    }

    [Fact]
    public void The_longest_kit_that_is_read_is_completed_at_its_end()
    {
        var text = new StringBuilder("panel:\n  width: 1 m\n");
        while (text.Length < 999_000)
        {
            text.Append("# a comment on the fen, over and over, as long as it takes\n");
        }

        var lines = text.ToString().Split('\n').Length;

        CommandRun.With(text + "  de", "complete", "-", "--at", FormattableString.Invariant($"{lines}:5")).Output.Should().StartWith("depth: \tkey\t");
    }

    [Fact]
    public void An_unsaved_kit_finds_the_parts_beside_the_file_that_it_will_be_saved_as()
    {
        var kit = _folder.File("fen.yaml");
        Directory.CreateDirectory(Path.Combine(Path.GetDirectoryName(kit)!, "parts", "pipes"));
        File.WriteAllText(Path.Combine(Path.GetDirectoryName(kit)!, "parts", "pipes", "hazel.yaml"), "title: Hazel rod\nsource: measured\ndiameter: 20 mm\n");

        CommandRun.With("frame:\n  pipe: haz", "complete", "-", "--at", "2:12", "--beside", kit).Output.Should().StartWith("hazel\tpart\t");
        CommandRun.With("frame:\n  pipe: haz", "complete", "-", "--at", "2:12").Output.Should().NotContain("hazel");
    }
}
