namespace StudioKit.Cli.Tests;

/// <summary>One run of the command with what it printed.</summary>
internal sealed record CommandRun(int ExitCode, string Output, string Error)
{
    public static CommandRun Of(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = StudioKitCommand.Run(args, new CommandHost { Output = output, Error = error });
        return new CommandRun(code, output.ToString(), error.ToString());
    }
}
