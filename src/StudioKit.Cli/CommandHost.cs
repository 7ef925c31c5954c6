using System.Runtime.CompilerServices;
using StudioKit.Cli.Serving;
using StudioKit.Cli.Usage;
using StudioKit.Kits;

namespace StudioKit.Cli;

/// <summary>Everything a command may touch outside its arguments, so that tests can put their own in its place.</summary>
internal sealed record CommandHost
{
    /// <summary>Results go here.</summary>
    public required TextWriter Output { get; init; }

    /// <summary>Everything else goes here.</summary>
    public required TextWriter Error { get; init; }

    /// <summary>Whether a person looks at <see cref="Output"/>.</summary>
    public bool OutputIsTerminal { get; init; }

    /// <summary>Whether a person looks at <see cref="Error"/>.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Whether colour is welcome where a person looks.</summary>
    public bool ColourAllowed { get; init; }

    /// <summary>Width of the terminal in characters.</summary>
    public int Width { get; init; } = 100;

    /// <summary>The clock, for records of the field only.</summary>
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Opens what comes in where a file is named <c>-</c>.</summary>
    public Func<Stream> OpenInput { get; init; } = Console.OpenStandardInput;

    /// <summary>Opens an address in a browser, and says whether that could be done.</summary>
    public Func<Uri, bool> OpenBrowser { get; init; } = BrowserWindow.Open;

    /// <summary>What was found wrong so far, for a program that asked for JSON.</summary>
    public IList<ReportedFault> Faults { get; init; } = [];

    /// <summary>Prints what is wrong with a kit, template or table, and keeps it in <see cref="Faults"/>.</summary>
    public void Report(Diagnostic diagnostic)
    {
        Error.WriteLine(CommandHints.On(diagnostic).Format());
        Faults.Add(FaultDocument.Of(diagnostic));
    }

    /// <summary>Prints a sentence about the command line or a file, and keeps it in <see cref="Faults"/>.</summary>
    /// <param name="code">One of <see cref="UsageCodes"/>.</param>
    /// <param name="sentence">What is wrong, and what would be accepted.</param>
    public void Report(string code, string sentence)
    {
        Error.WriteLine($"studiokit: {sentence}");
        Faults.Add(new ReportedFault(code, "error", sentence));
    }

    /// <summary>Stops what is being done, when the user says so.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Files written so far.</summary>
    public IList<string> Written { get; init; } = [];

    /// <summary>Whether it was said that the run was stopped; all copies of a host share it.</summary>
    public StrongBox<int> Stopped { get; init; } = new();

    /// <summary>Says once that the run was stopped, and what it has written.</summary>
    public void SayStopped()
    {
        if (Interlocked.Exchange(ref Stopped.Value, 1) == 0)
        {
            Error.WriteLine(Written.Count == 0 ? "studiokit: stopped; nothing was written." : $"studiokit: stopped; written before that: {string.Join(", ", Written)}.");
        }
    }

    /// <summary>The host of a real process.</summary>
    public static CommandHost ForProcess() => new()
    {
        Output = Console.Out,
        Error = Console.Error,
        OutputIsTerminal = !Console.IsOutputRedirected,
        ErrorIsTerminal = !Console.IsErrorRedirected,
        ColourAllowed = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
            && Environment.GetEnvironmentVariable("TERM") != "dumb",
        Width = Console.IsOutputRedirected ? 100 : Math.Clamp(Console.WindowWidth, 60, 200),
    };
}
