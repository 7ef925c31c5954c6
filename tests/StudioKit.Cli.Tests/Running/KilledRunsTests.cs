using System.Diagnostics;
using System.Globalization;

namespace StudioKit.Cli.Tests.Running;

/// <summary>Runs that are killed without warning while they write: what was there is there, whole, and the same command works again.</summary>
/// <remarks>A handful of kills in the ordinary run, as many as <c>STUDIOKIT_RANDOM_FILES</c> says where it is set.</remarks>
public sealed class KilledRunsTests : IDisposable
{
    private static readonly int Kills = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_FILES"), NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : 5;
    private readonly TemporaryFolder _folder = new();
    private readonly Random _random = new(12);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Sheets_that_are_killed_leave_old_or_new_files_and_work_again()
    {
        string[] Args(bool second, string folder) => ["sheets", Repository.Kit("fen-edge.yaml"), "--date", second ? "2027-05-15" : "2027-05-14", "--out", folder];

        KillAndLookAgain(Args, []);
    }

    [Fact]
    public void Scaled_copies_that_are_killed_leave_originals_and_old_or_new_copies_and_work_again()
    {
        var originals = Enumerable.Range(0, 4).Select(i => Picture($"originals/{i}.png", (byte)(200 + i))).ToArray();
        string[] Args(bool second, string folder) => ["scale", .. originals, "--pixel-size", second ? "5 um" : "6 um", "--out", folder];

        KillAndLookAgain(Args, originals);
    }

    [Fact]
    public async Task A_log_that_is_killed_keeps_all_that_it_acknowledged_and_works_again()
    {
        var log = _folder.File("field.log");
        CommandRun.Of("log", "session", "--log", log, "--locality", "Fen 0").ExitCode.Should().Be(0);
        var acknowledged = new List<string> { "Fen 0" };
        for (var i = 1; i <= Kills; i++)
        {
            using var run = CliProcess.Start("log", "session", "--log", log, "--locality", FormattableString.Invariant($"Fen {i}"));
            var output = run.StandardOutput.ReadToEndAsync();
            await Task.Delay(_random.Next(100, 700));
            run.Kill();
            await run.WaitForExitAsync();
            acknowledged.AddRange((await output).EndsWith('\n') ? [FormattableString.Invariant($"Fen {i}")] : []);
        }

        var list = CommandRun.Of("log", "list", "--log", log, "--json");
        list.ExitCode.Should().Be(0, list.Error);
        acknowledged.Should().OnlyContain(locality => list.Output.Contains($"\"{locality}\""));
        CommandRun.Of("log", "session", "--log", log, "--locality", "Fen at last").ExitCode.Should().Be(0);
        Directory.EnumerateFileSystemEntries(_folder.Path).Should().Equal(log);
    }

    // Two contents in turn into one folder: whatever is there after a kill is a whole file of one or of the other.
    private void KillAndLookAgain(Func<bool, string, string[]> args, string[] originals)
    {
        var (first, second, target) = (_folder.File("first"), _folder.File("second"), _folder.File("target"));
        CommandRun.Of(args(false, first)).ExitCode.Should().BeLessThan(2);
        CommandRun.Of(args(true, second)).ExitCode.Should().BeLessThan(2);
        CommandRun.Of(args(false, target)).ExitCode.Should().BeLessThan(2);
        var (before, names) = (originals.Select(Hash).ToList(), Visible(first));

        for (var i = 0; i < Kills; i++)
        {
            Kill(args(i % 2 == 0, target), target);

            Visible(target).Should().Equal(names, "a file that was there is there");
            names.Should().OnlyContain(name => Is(target, name, first) || Is(target, name, second));
            originals.Select(Hash).Should().Equal(before);
        }

        CommandRun.Of(args(true, target)).ExitCode.Should().BeLessThan(2);
        names.Should().OnlyContain(name => Is(target, name, second));
        Directory.EnumerateFileSystemEntries(target).Select(Path.GetFileName).Should().BeEquivalentTo([.. names, ".studiokit-written"], "nothing is left over");
    }

    // Half of the kills come while the run writes, the others at any time.
    private void Kill(string[] args, string target)
    {
        var (known, atWriting) = (Staging(target), _random.Next(2) == 0);
        using var run = CliProcess.Start(args);
        var read = Task.WhenAll(run.StandardOutput.ReadToEndAsync(), run.StandardError.ReadToEndAsync());
        var since = Stopwatch.GetTimestamp();
        while (atWriting && !run.HasExited && Staging(target) == known && Stopwatch.GetElapsedTime(since) < TimeSpan.FromMinutes(1))
        {
            Thread.Sleep(1);
        }

        Thread.Sleep(_random.Next(atWriting ? 150 : 2000));
        run.Kill();
        run.WaitForExit();
        read.Wait();
    }

    private static string Staging(string folder) => string.Join(',', Directory.EnumerateDirectories(folder, ".studiokit-staging-*").Order(StringComparer.Ordinal));

    private static List<string> Visible(string folder) =>
        [.. Directory.EnumerateFiles(folder).Select(path => Path.GetFileName(path)).Where(name => name[0] != '.').Order(StringComparer.Ordinal)];

    private static bool Is(string folder, string name, string other) => Hash(Path.Combine(folder, name)) == Hash(Path.Combine(other, name));

    private static string Hash(string path) => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)));

    private string Picture(string name, byte code) => _folder.GreyPicture(name, 900, 700, code);
}
