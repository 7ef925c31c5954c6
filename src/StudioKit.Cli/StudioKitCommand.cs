using System.CommandLine;
using StudioKit.Cli.Commands;
using StudioKit.Cli.Files;

namespace StudioKit.Cli;

/// <summary>The <c>studiokit</c> command: its subcommands, and what becomes of faults that they do not handle.</summary>
internal static class StudioKitCommand
{
    private static readonly (string Name, Func<CommandHost, Command> Create)[] Commands =
    [
        ("new", NewCommand.Create),
        ("check", CheckCommand.Create),
        ("schema", SchemaCommand.Create),
        ("plan", PlanCommand.Create),
        ("sheets", SheetsCommand.Create),
        ("optics", OpticsCommand.Create),
        ("exposure", ExposureCommand.Create),
        ("light", LightCommand.Create),
        ("cut", CutCommand.Create),
        ("photo", PhotoCommand.Create),
        ("calibrate", CalibrateCommand.Create),
        ("scale", ScaleCommand.Create),
        ("log", LogCommand.Create),
        ("completion", CompletionCommand.Create),
    ];

    /// <summary>Parses and runs one command line.</summary>
    /// <returns>The exit code: 0 done, 1 a check fails, 2 bad usage or kit, 3 file trouble.</returns>
    public static int Run(string[] args, CommandHost host)
    {
        var parsed = Build(args, host).Parse(args);
        var invocation = new InvocationConfiguration
        {
            Output = host.Output,
            Error = host.Error,
            EnableDefaultExceptionHandler = false,
        };
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                host.Error.WriteLine($"studiokit: {error.Message}");
            }

            host.Error.WriteLine($"Try 'studiokit {CommandPath(parsed)}--help'.");
            return (int)ExitCode.BadInput;
        }

        try
        {
            return parsed.Invoke(invocation);
        }
        catch (FileTroubleException trouble)
        {
            host.Error.WriteLine($"studiokit: {trouble.Message}");
            return (int)ExitCode.FileTrouble;
        }
        catch (OperationCanceledException)
        {
            host.Error.WriteLine("studiokit: stopped; nothing was written.");
            return (int)ExitCode.BadInput;
        }
    }

    // Building a command costs start-up time, so a call that names one builds that one alone; help and completion want them all.
    private static RootCommand Build(string[] args, CommandHost host)
    {
        var root = new RootCommand(
            "Plans a backpackable white-background studio for small living things: panel, flash, frame, cuts, weight, cards.");
        var named = args.Length > 0 ? Commands.FirstOrDefault(command => command.Name == args[0]).Create : null;
        if (named is not null)
        {
            root.Subcommands.Add(named(host));
            return root;
        }

        foreach (var (_, create) in Commands)
        {
            var command = create(host);
            command.Description = FirstSentence(command.Description!);
            root.Subcommands.Add(command);
        }

        return root;
    }

    // The list of all commands has a line for each; its own help says the rest.
    private static string FirstSentence(string description) => description.Split("\n\n")[0].ReplaceLineEndings(" ");

    private static string CommandPath(ParseResult parsed)
    {
        var path = "";
        for (var result = parsed.CommandResult; result.Parent is System.CommandLine.Parsing.CommandResult parent; result = parent)
        {
            path = $"{result.Command.Name} {path}";
        }

        return path;
    }
}
