using System.Diagnostics;
using System.Globalization;

namespace StudioKit.Cli.Tests.Running;

public sealed class InterruptionTests : IDisposable
{
    // As shells count a process that the interrupt signal ended: 128 + 2.
    private const int Interrupted = 130;
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>
    /// Panels of forty sizes keep the search busy for minutes. Once the solver's library is there, the search is on; a command that did not heed the keys
    /// would end without its plan, or not at all.
    /// </summary>
    [Fact]
    public async Task A_cut_plan_that_is_interrupted_prints_the_best_so_far_and_says_that_it_is_not_proven()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var cut = CliProcess.Start("cut", "--sheet-pieces", Panels(), "--sheets", Sheets());
        var output = cut.StandardOutput.ReadToEndAsync();
        var error = cut.StandardError.ReadToEndAsync();
        using var hanging = new CancellationTokenSource(TimeSpan.FromMinutes(5));
        await SearchingAsync(cut, hanging.Token);
        CliProcess.Interrupt(cut);
        await cut.WaitForExitAsync(hanging.Token);

        cut.ExitCode.Should().Be(Interrupted);
        (await error).Should().Contain("stopped; the plan is the best found so far, and not proven");
        (await output).Should().Contain("above the best plan");
    }

    [Fact]
    public void A_cut_plan_keeps_to_its_time_limit_and_says_so()
    {
        var run = CommandRun.Of("cut", "--sheet-pieces", Panels(), "--sheets", Sheets(), "--time-limit", "0.2 s");

        run.ExitCode.Should().Be(0, "the plan is sound, only not proven");
        run.Error.Should().Contain("the time is up; the plan is the best found so far, and not proven");
        run.Output.Should().Contain("above the best plan");
    }

    /// <summary>Whenever the interrupt comes, the run is either whole or has written nothing, and says which.</summary>
    [Fact]
    public void Sheets_that_are_interrupted_say_that_nothing_was_written()
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        var codes = new[] { 700, 1000, 1300 }.Select(milliseconds => Interrupt(milliseconds, times: 1)).ToList();

        codes.Should().Contain(Interrupted, "the run takes longer than the first of these");
    }

    [Fact]
    public void Who_presses_the_keys_twice_is_told_as_well_and_once()
    {
        if (OperatingSystem.IsLinux())
        {
            Interrupt(1000, times: 2).Should().Be(Interrupted, "the run takes longer than that");
        }
    }

    [Fact]
    public void Who_stops_a_run_whose_record_is_written_is_not_told_that_nothing_was()
    {
        var path = _folder.File("field.log");

        Stopped("log", "session", "--locality", "Wisplow Fen", "--log", path).Should().EndWith($"studiokit: stopped; written before that: {path}.{Environment.NewLine}");
        Stopped("log", "list", "--log", path).Should().EndWith($"studiokit: stopped; nothing was written.{Environment.NewLine}");
    }

    // The library is loaded when the first search begins; how long that takes is the machine's own business.
    private static async Task SearchingAsync(Process cut, CancellationToken hanging)
    {
        while (!(await File.ReadAllTextAsync(FormattableString.Invariant($"/proc/{cut.Id}/maps"), hanging)).Contains("ortools", StringComparison.Ordinal))
        {
            await Task.Delay(50, hanging);
        }

        await Task.Delay(500, hanging);
    }

    private static string Stopped(params string[] line)
    {
        using var error = new StringWriter();
        var host = new CommandHost { Output = TextWriter.Null, Error = error };
        StudioKitCommand.Run(line, host).Should().Be(0);
        host.SayStopped();
        return error.ToString();
    }

    private int Interrupt(int milliseconds, int times)
    {
        var folder = _folder.File(milliseconds.ToString(CultureInfo.InvariantCulture));
        using var sheets = CliProcess.Start("sheets", Repository.Kit("fen-edge.yaml"), "--out", folder);
        var output = sheets.StandardOutput.ReadToEndAsync();
        var error = sheets.StandardError.ReadToEndAsync();
        Thread.Sleep(milliseconds);
        CliProcess.Interrupt(sheets, times);
        sheets.WaitForExit();
        if (sheets.ExitCode == Interrupted)
        {
            error.Result.Should().Be("studiokit: stopped; nothing was written." + Environment.NewLine);
            output.Result.Should().BeEmpty();
            Directory.Exists(folder).Should().BeFalse();
        }

        return sheets.ExitCode;
    }

    private string Panels()
    {
        var random = new Random(5);
        var rows = Enumerable.Range(0, 40).Select(i => string.Create(CultureInfo.InvariantCulture, $"p{i},{random.Next(100, 700)} mm,{random.Next(100, 700)} mm,{random.Next(1, 4)},yes"));
        File.WriteAllLines(_folder.File("panels.csv"), rows.Prepend("label,width,height,count,turn"));
        return _folder.File("panels.csv");
    }

    private string Sheets()
    {
        File.WriteAllText(_folder.File("sheets.csv"), "width,height,price,count\n1220 mm,2440 mm,60,\n1000 mm,2000 mm,43,\n610 mm,1220 mm,19,\n");
        return _folder.File("sheets.csv");
    }
}
