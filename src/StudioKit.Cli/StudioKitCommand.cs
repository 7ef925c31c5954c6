using System.CommandLine;
using StudioKit.Cli.Commands;
using StudioKit.Cli.Files;

namespace StudioKit.Cli;

/// <summary>The <c>studiokit</c> command: its subcommands, and what becomes of faults that they do not handle.</summary>
internal static class StudioKitCommand
{
    /// <summary>Parses and runs one command line.</summary>
    /// <returns>The exit code: 0 done, 1 a check fails, 2 bad usage or kit, 3 file trouble.</returns>
    public static int Run(string[] args, CommandHost host)
    {
        var parsed = Build(host).Parse(args);
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

            host.Error.WriteLine($"Try 'studiokit {string.Join(' ', CommandPath(parsed))}--help'.");
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

    private static RootCommand Build(CommandHost host)
    {
        var root = new RootCommand(
            "Plans a backpackable white-background studio for small living things: panel, flash, frame, cuts, weight, cards.");
        root.Subcommands.Add(NewCommand.Create(host));
        root.Subcommands.Add(CheckCommand.Create(host));
        root.Subcommands.Add(PlanCommand.Create(host));
        root.Subcommands.Add(SheetsCommand.Create(host));
        root.Subcommands.Add(OpticsCommand.Create(host));
        root.Subcommands.Add(ExposureCommand.Create(host));
        root.Subcommands.Add(SchemaCommand.Create(host));
        root.Subcommands.Add(CutCommand.Create(host));
        root.Subcommands.Add(PhotoCommand.Create(host));
        root.Subcommands.Add(CalibrateCommand.Create(host));
        root.Subcommands.Add(ScaleCommand.Create(host));
        root.Subcommands.Add(LogCommand.Create(host));
        root.Subcommands.Add(CompletionCommand.Create(host));
        return root;
    }

    private static IEnumerable<string> CommandPath(ParseResult parsed)
    {
        for (var result = parsed.CommandResult; result.Parent is not null; result = (System.CommandLine.Parsing.CommandResult)result.Parent)
        {
            yield return result.Command.Name + " ";
        }
    }
}
