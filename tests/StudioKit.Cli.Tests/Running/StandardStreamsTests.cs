namespace StudioKit.Cli.Tests.Running;

/// <summary>Output that goes nowhere: the device that is always full (full(4)), streams that the caller closed, a reader that had enough.</summary>
public sealed class StandardStreamsTests
{
    private static readonly string Kit = Repository.Kit("fen-edge.yaml");

    [Theory]
    [InlineData("studiokit check {0} > /dev/full", "the disk is full")]
    [InlineData("studiokit check {0} --json > /dev/full", "the disk is full")]
    [InlineData("studiokit check {0} >&-", "it is closed")]
    [InlineData("studiokit optics 2> /dev/full", "")]
    [InlineData("studiokit optics 2>&-", "")]
    [InlineData("studiokit check {0} >&- 2>&-", "")]
    public void Lost_words_are_file_trouble_and_leave_no_trace_of_calls(string line, string sentence)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var (code, output, error) = CliProcess.Shell(string.Format(System.Globalization.CultureInfo.InvariantCulture, line, Kit));

        code.Should().Be(3);
        output.Should().BeEmpty();
        error.Should().MatchEquivalentOf($"*{sentence}*").And.NotContainAny("Unhandled", "   at ");
    }

    [Fact]
    public void A_reader_that_has_had_enough_ends_the_run_as_usual()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var (code, output, error) = CliProcess.Shell("set -o pipefail; studiokit schema | head -1");

        code.Should().Be(0);
        output.Should().Be("{\n");
        error.Should().BeEmpty();
    }
}
