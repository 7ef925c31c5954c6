using System.Text.Json;

namespace StudioKit.Cli.Tests.Commands;

public sealed class SeveralKitsTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void One_kits_errors_do_not_stop_the_others_and_the_exit_code_is_the_highest()
    {
        File.WriteAllText(_folder.File("bad.yaml"), "kit: Bad\n");

        var run = CommandRun.Of("plan", _folder.File("bad.yaml"), Repository.Kit("heath-ultralight.yaml"), _folder.File("nowhere.yaml"));

        run.ExitCode.Should().Be(3);
        run.Output.Should().Contain("Heath ultralight").And.Contain("Cannot be used yet").And.Contain("Cannot be read.");
        run.Error.Should().Contain("bad.yaml(1,").And.Contain("nowhere.yaml");
    }

    [Fact]
    public void Several_kits_make_one_json_document()
    {
        File.WriteAllText(_folder.File("bad.yaml"), "kit: Bad\n");

        var run = CommandRun.Of("plan", _folder.File("bad.yaml"), Repository.Kit("heath-ultralight.yaml"), "--json");

        run.ExitCode.Should().Be(2);
        using var json = JsonDocument.Parse(run.Output);
        var kits = json.RootElement.GetProperty("kits");
        kits[0].GetProperty("exitCode").GetInt32().Should().Be(2);
        kits[0].GetProperty("diagnostics").GetArrayLength().Should().BeGreaterThan(0);
        kits[1].GetProperty("plan").GetProperty("kit").GetString().Should().Be("Heath ultralight");
    }

    [Fact]
    public void A_kit_may_come_in_on_the_standard_input()
    {
        var run = CommandRun.With(File.ReadAllText(Repository.Kit("heath-ultralight.yaml")), "plan", "-");

        run.ExitCode.Should().Be(0);
        run.Output.Should().Be(CommandRun.Once("plan", Repository.Kit("heath-ultralight.yaml")).Output);
    }

    [Fact]
    public void What_is_wrong_with_a_kit_on_the_standard_input_is_told_by_line()
    {
        var run = CommandRun.With("kit: Bad\ncamera: 5\n", "check", "-");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("standard input(1,");
    }

    [Fact]
    public void The_verdict_comes_before_everything_else_a_plan_says()
    {
        var lines = CommandRun.Once("plan", Repository.Kit("fen-edge.yaml")).Output.Split('\n');

        lines[1].Should().StartWith("This studio can be built.").And.Contain("cards hold");
    }

    [Fact]
    public void The_verdict_on_a_studio_that_cannot_be_built_names_what_fails()
    {
        var run = CommandRun.With(File.ReadAllText(Repository.Kit("fen-edge.yaml")).Replace("  width: 600 mm", "  width: 200 mm", StringComparison.Ordinal), "check", "-", "--plan");

        run.ExitCode.Should().Be(1);
        run.Output.Should().Contain("This studio cannot be built as the kit has it: ").And.Contain("panel size");
        run.Error.Should().Contain("panel.width (now 200 mm)");
    }

    [Fact]
    public void Whether_a_kit_can_be_used_is_said_before_what_is_wrong_with_it()
    {
        File.WriteAllText(_folder.File("bad.yaml"), "kit: Bad\n");

        CommandRun.Of("check", _folder.File("bad.yaml")).Error.Split('\n')[0].Should().Contain("cannot be used yet, 2 errors");
    }

    [Fact]
    public void A_light_budget_is_asked_of_one_kit()
    {
        CommandRun.Of("plan", Repository.Kit("fen-edge.yaml"), Repository.Kit("heath-ultralight.yaml"), "--why", "reed").ExitCode.Should().Be(2);
    }

    [Fact]
    public void The_standard_input_is_read_once()
    {
        var run = CommandRun.With(File.ReadAllText(Repository.Kit("heath-ultralight.yaml")), "plan", "-", "-");

        run.ExitCode.Should().Be(2);
        run.Error.Should().Contain("name - once");
    }
}
