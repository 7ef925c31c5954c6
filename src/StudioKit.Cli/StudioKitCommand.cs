using System.CommandLine;
using StudioKit.Cli.Commands;
using StudioKit.Cli.Files;
using StudioKit.Cli.Running;
using StudioKit.Cli.Usage;
using StudioKit.Writing;

namespace StudioKit.Cli;

/// <summary>The <c>studiokit</c> command: its subcommands, and what becomes of faults that they do not handle.</summary>
internal static class StudioKitCommand
{
    private const string Speaker = "studiokit: ";

    // An argument that begins with @ is an argument: captions and handles do, and no file is to be read because of it.
    private static readonly ParserConfiguration Parsing = new() { ResponseFileTokenReplacer = null };

    private static readonly (string Name, Func<CommandHost, Command> Create)[] Commands =
    [
        ("new", NewCommand.Create),
        ("check", CheckCommand.Create),
        ("schema", SchemaCommand.Create),
        ("complete", CompleteCommand.Create),
        ("parts", PartsCommand.Create),
        ("words", WordsCommand.Create),
        ("plan", PlanCommand.Create),
        ("sheets", SheetsCommand.Create),
        ("explore", ExploreCommand.Create),
        ("optics", OpticsCommand.Create),
        ("exposure", ExposureCommand.Create),
        ("light", LightCommand.Create),
        ("cut", CutCommand.Create),
        ("photo", PhotoCommand.Create),
        ("calibrate", CalibrateCommand.Create),
        ("scale", ScaleCommand.Create),
        ("log", LogCommand.Create),
        ("web", WebCommand.Create),
        ("help", host => HelpCommand.Create(host, () => BuildAll(host))),
        ("completion", CompletionCommand.Create),
    ];

    /// <summary>Parses and runs one command line.</summary>
    /// <returns>The exit code: 0 done, 1 a check fails, 2 bad usage or kit, 3 file trouble, 130 stopped.</returns>
    public static int Run(string[] args, CommandHost host)
    {
        using var output = new HarmlessWriter(host.Output);
        using var error = new HarmlessWriter(host.Error);
        var harmless = host with { Output = output, Error = error };
        return args.TakeWhile(argument => argument != "--").Contains(JsonOption.Name, StringComparer.Ordinal) ? RunForProgram(args, harmless) : RunOne(args, harmless);
    }

    /// <summary>The command with every subcommand.</summary>
    public static RootCommand BuildAll(CommandHost host) => Build([], host);

    // Who asked for JSON gets a document whatever happens: where the asked one could not be made, one that says why.
    private static int RunForProgram(string[] args, CommandHost host)
    {
        using var heard = new HeardWriter(host.Error);
        using var document = new HeldDocument();
        var listening = host with { Output = document, OutputIsTerminal = false, Error = heard, Faults = [] };
        var code = RunOne(args, listening);
        if (code < (int)ExitCode.BadInput)
        {
            document.HandOn(host.Output);
            return code;
        }

        IReadOnlyList<ReportedFault> faults = listening.Faults.Count > 0
            ? [.. listening.Faults]
            : [.. heard.Sentences.Select(sentence => new ReportedFault(UsageCodes.Refused, "error", WithoutName(sentence)))];
        host.Output.Write(FaultDocument.Completed(document.Whole(), (ExitCode)code, faults) + Environment.NewLine);
        return code;
    }

    // Who is speaking a program knows.
    private static string WithoutName(string sentence) => sentence.StartsWith(Speaker, StringComparison.Ordinal) ? sentence[Speaker.Length..] : sentence;

    private static int RunOne(string[] args, CommandHost host)
    {
        var root = Build(args, host);
        if (args.Length == 0)
        {
            host.Error.Write(CommandHelp.Text(root, "studiokit", host.Width));
            return (int)ExitCode.BadInput;
        }

        var parsed = root.Parse(args, Parsing);
        var invocation = new InvocationConfiguration
        {
            Output = host.Output,
            Error = host.Error,
            EnableDefaultExceptionHandler = false,

            // The host hears the calls to stop; two that hear them would get in each other's way.
            ProcessTerminationTimeout = null,
        };
        if (UsageText.Faults(parsed) is { Count: > 0 } faults)
        {
            foreach (var fault in faults)
            {
                host.Report(UsageCodes.BadUsage, fault);
            }

            host.Error.WriteLine($"Try 'studiokit {CommandPath(parsed)}--help'.");
            return (int)ExitCode.BadInput;
        }

        try
        {
            return parsed.InvokeAsync(invocation, host.Stop).GetAwaiter().GetResult();
        }
        catch (Exception trouble) when (trouble is FileTroubleException or FileWritingException)
        {
            host.Report(UsageCodes.FileTrouble, trouble.Message);
            return (int)ExitCode.FileTrouble;
        }
        catch (OperationCanceledException)
        {
            host.SayStopped();
            return (int)ExitCode.Stopped;
        }
    }

    // Building a command costs start-up time, so a call that names one builds that one alone; help and completion want them all.
    private static RootCommand Build(string[] args, CommandHost host)
    {
        var root = new RootCommand(
            "Plans a backpackable white-background studio for small living things: panel, flash, frame, cuts, weight, cards.");
        var named = args.Length > 0 ? Commands.FirstOrDefault(command => command.Name == args[0]).Create : null;
        foreach (var create in named is null ? Commands.Select(command => command.Create) : [named])
        {
            root.Subcommands.Add(create(host));
        }

        CommandHelp.ReplaceIn(root, host);
        return root;
    }

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
