using System.Diagnostics;
using System.Globalization;

namespace StudioKit.Cli.Tests.Running;

/// <summary>The command as a process of its own, with a shell's redirections where a test wants them.</summary>
internal static class CliProcess
{
    private const int InterruptSignal = 2;
    private const string IgnoredMask = "SigIgn:";

    private static string Dll => typeof(StudioKitCommand).Assembly.Location;

    // What a shell starts in the background ignores the keys, and so would all that it starts; a run of the tests there must not wait for ever.
    private static bool IgnoresKeys => OperatingSystem.IsLinux() && (IgnoredSignals & (1UL << (InterruptSignal - 1))) != 0;

    private static ulong IgnoredSignals => ulong.Parse(
        File.ReadLines("/proc/self/status").Single(line => line.StartsWith(IgnoredMask, StringComparison.Ordinal))[IgnoredMask.Length..].Trim(),
        NumberStyles.HexNumber,
        CultureInfo.InvariantCulture);

    /// <summary>Starts the command as a terminal would, so that it can be interrupted.</summary>
    public static Process Start(params string[] args)
    {
        string[] command = [.. IgnoresKeys ? new[] { "env", "--default-signal=INT" } : [], "dotnet", "exec", Dll, .. args];
        return Process.Start(new ProcessStartInfo(command[0], command[1..])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
    }

    /// <summary>Runs a line of shell in which <c>studiokit</c> is the command.</summary>
    /// <returns>Exit code, output and errors as far as they are not redirected in the line.</returns>
    public static (int Code, string Output, string Error) Shell(string line)
    {
        using var shell = Process.Start(new ProcessStartInfo("/bin/bash", ["-c", $"studiokit() {{ dotnet exec '{Dll}' \"$@\"; }}; {line}"])
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var error = shell.StandardError.ReadToEndAsync();
        var output = shell.StandardOutput.ReadToEnd();
        shell.WaitForExit();
        return (shell.ExitCode, output, error.GetAwaiter().GetResult());
    }

    /// <summary>Sends a process the signal that Ctrl-C sends, as often as the keys are pressed.</summary>
    public static void Interrupt(Process process, int times = 1)
    {
        var signal = FormattableString.Invariant($"kill -INT {process.Id}");
        using var kill = Process.Start("/bin/bash", ["-c", string.Join("; sleep 0.02; ", Enumerable.Repeat(signal, times))]);
        kill.WaitForExit();
    }
}
