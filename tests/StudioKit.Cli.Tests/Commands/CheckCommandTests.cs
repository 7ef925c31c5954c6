using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

public sealed class CheckCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("pond-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void A_demo_kit_reads_without_errors(string kit)
    {
        var run = CommandRun.Of("check", Repository.Kit(kit));

        run.Error.Should().BeEmpty();
        run.ExitCode.Should().Be(0);
    }

    [Fact]
    public void A_missing_file_is_file_trouble_and_is_named()
    {
        var run = CommandRun.Of("check", _folder.File("nowhere.yaml"));

        run.ExitCode.Should().Be(3);
        run.Output.Should().BeEmpty();
        run.Error.Should().Contain("cannot read").And.Contain("nowhere.yaml");
    }

    [Fact]
    public void A_folder_in_place_of_a_kit_is_file_trouble()
    {
        CommandRun.Of("check", _folder.Path).ExitCode.Should().Be(3);
    }

    [Fact]
    public void Every_fault_of_a_kit_is_shown_at_once_with_its_place()
    {
        File.WriteAllText(_folder.File("bad.yaml"), "kit: Bad\ncamera:\n  name: body\n  sensor: 36 x 24\n  pixls: 8000 x 6000\nlenses: []\n");

        var run = CommandRun.Of("check", _folder.File("bad.yaml"));

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("bad.yaml(4,").And.Contain("bad.yaml(5,").And.Contain("errors.");
    }

    [Fact]
    public void The_json_form_carries_code_line_and_column()
    {
        File.WriteAllText(_folder.File("bad.yaml"), "kit: Bad\ncamera:\n  name: body\n  sensor: 36 x 24\n");

        var run = CommandRun.Of("check", _folder.File("bad.yaml"), "--json");

        using var json = JsonDocument.Parse(run.Output);
        json.RootElement.GetProperty("sound").GetBoolean().Should().BeFalse();
        json.RootElement.GetProperty("diagnostics").EnumerateArray()
            .Should().Contain(entry => entry.GetProperty("line").GetInt32() == 4 && entry.GetProperty("code").GetString() == "KIT001");
    }

    [Fact]
    public void Defaults_are_listed_when_asked_for()
    {
        var run = CommandRun.Of("check", Repository.Kit("fen-edge.yaml"), "--defaults");

        run.Output.Should().Contain("panel.");
    }
}
