using System.Collections.Concurrent;

namespace StudioKit.Cli.Tests;

/// <summary>One run of the command with what it printed.</summary>
internal sealed record CommandRun(int ExitCode, string Output, string Error)
{
    private static readonly ConcurrentDictionary<string, Lazy<CommandRun>> Runs = new(StringComparer.Ordinal);

    public static CommandRun Of(params string[] args) => At(TimeProvider.System, args);

    /// <summary>A run of a command that only reads, made once for all tests that look at what it printed.</summary>
    public static CommandRun Once(params string[] args) =>
        Runs.GetOrAdd(string.Join('\n', args), _ => new Lazy<CommandRun>(() => Of(args))).Value;

    /// <summary>A run at a time of its own.</summary>
    public static CommandRun At(TimeProvider clock, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = StudioKitCommand.Run(args, new CommandHost { Output = output, Error = error, Clock = clock });
        return new CommandRun(code, output.ToString(), error.ToString());
    }
}
