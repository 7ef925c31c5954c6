using System.Diagnostics;

namespace StudioKit.Cli.Tests.Running;

/// <summary>The command as a process of its own, with a shell's redirections where a test wants them.</summary>
internal static class CliProcess
{
    private static string Dll => typeof(StudioKitCommand).Assembly.Location;

    /// <summary>Starts the command.</summary>
    public static Process Start(params string[] args) => Process.Start(new ProcessStartInfo("dotnet", ["exec", Dll, .. args])
    {
        UseShellExecute = false,
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

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
