namespace StudioKit.Cli.Tests.Commands;

public sealed class NewCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void The_starter_kit_is_written_checks_without_errors_and_stands()
    {
        var made = CommandRun.Of("new", _folder.File("my-kit.yaml"));

        made.ExitCode.Should().Be(0);
        made.Output.Trim().Should().Be(_folder.File("my-kit.yaml"));
        CommandRun.Of("check", _folder.File("my-kit.yaml")).ExitCode.Should().Be(0);
        CommandRun.Of("plan", _folder.File("my-kit.yaml")).ExitCode.Should().Be(0);
    }

    [Fact]
    public void A_kit_that_was_changed_since_is_never_replaced_unasked()
    {
        CommandRun.Of("new", _folder.File("my-kit.yaml"));
        File.AppendAllText(_folder.File("my-kit.yaml"), "# mine\n");

        var again = CommandRun.Of("new", _folder.File("my-kit.yaml"));

        again.ExitCode.Should().Be(3);
        again.Error.Should().Contain("--force");
        File.ReadAllText(_folder.File("my-kit.yaml")).Should().EndWith("# mine\n");
        CommandRun.Of("new", _folder.File("my-kit.yaml"), "--force").ExitCode.Should().Be(0);
    }

    [Fact]
    public void A_folder_that_is_missing_is_made()
    {
        CommandRun.Of("new", _folder.File("a/b/my-kit.yaml")).ExitCode.Should().Be(0);

        File.Exists(_folder.File("a/b/my-kit.yaml")).Should().BeTrue();
    }

    [Fact]
    public void A_path_that_runs_through_a_file_is_file_trouble()
    {
        File.WriteAllText(_folder.File("taken"), "");

        var run = CommandRun.Of("new", _folder.File("taken/my-kit.yaml"));

        run.ExitCode.Should().Be(3);
        run.Error.Should().Contain("taken");
    }
}
