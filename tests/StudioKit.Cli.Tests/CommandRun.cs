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

    /// <summary>A run with something coming in on the standard input.</summary>
    public static CommandRun With(string input, params string[] args) => At(
        new CommandHost { Output = TextWriter.Null, Error = TextWriter.Null, OpenInput = () => new MemoryStream(System.Text.Encoding.UTF8.GetBytes(input)) }, args);

    /// <summary>A run at a time of its own.</summary>
    public static CommandRun At(TimeProvider clock, params string[] args) => At(new CommandHost { Output = TextWriter.Null, Error = TextWriter.Null, Clock = clock }, args);

    private static CommandRun At(CommandHost host, string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = StudioKitCommand.Run(args, host with { Output = output, Error = error, Faults = [] });
        return new CommandRun(code, output.ToString(), error.ToString());
    }
}
