using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit check</c>: reads kits and says everything that is wrong with them.</summary>
internal sealed class CheckCommand
{
    private const string Text =
        """
        Reads kit files and says whether they can be used, then everything that is wrong with them, with line and column, and what would be accepted.

        With --plan it also plans each, and says whether the studio can be built and the cards hold; exit code 1 where a check of a plan fails.

        Example: studiokit check kits/fen-edge.yaml --defaults
        Example: studiokit check kits/*.yaml --plan
        Example: studiokit check kits/fen-edge.yaml --plan --date 2026-12-14
        """;

    private readonly CommandHost _host;
    private readonly Argument<string[]> _kits = KitInput.Arguments();
    private readonly Option<bool> _defaults = new("--defaults") { Description = "Also list every value that the kit leaves out, and what is taken for it." };
    private readonly Option<bool> _plan = new("--plan") { Description = "Also plan each kit, and say whether the studio can be built and the cards hold." };
    private readonly Option<bool> _json = JsonOption.Create();
    private readonly DayOptions _day = new();

    private CheckCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var check = new CheckCommand(host);
        var command = new Command("check", Text) { check._kits, check._defaults, check._plan, check._json };
        check._day.AddTo(command);
        command.Validators.Add(result =>
        {
            if (check._day.IsGiven(result) && (result.GetResult(check._plan) is null or { Implicit: true }))
            {
                result.AddError("--date, --latitude, --longitude and --utc-offset go with --plan.");
            }
        });
        command.SetAction(parsed => (int)check.Run(parsed));
        return command;
    }

    private ExitCode Run(ParseResult parsed)
    {
        var paths = parsed.GetRequiredValue(_kits);
        if (!parsed.GetValue(_json))
        {
            return paths.Max(path => Guarded(path, host => Tell(path, parsed, host)));
        }

        if (paths.Length == 1)
        {
            return Document(paths[0], parsed, text => _host.Output.WriteLine(text));
        }

        var documents = new List<Action<JsonReport>>();
        var code = paths.Max(path => Guarded(path, host =>
        {
            var (read, plan) = Read(path, parsed, host);
            documents.Add(json => Fill(json, path, read, plan));
            return Code(read, plan);
        }, fault => documents.Add(json => FaultDocument.Fill(json.Text("file", path).Text("kit", null).Flag("sound", false), [fault]))));
        _host.Output.WriteLine(JsonReport.Document(json => json.List("kits", documents, fill => fill(json))));
        return code;
    }

    private ExitCode Document(string path, ParseResult parsed, Action<string> print)
    {
        var (read, plan) = Read(path, parsed, _host);
        print(JsonReport.Document(json => Fill(json, path, read, plan)));
        return Code(read, plan);
    }

    // One kit that cannot be read does not stop the others.
    private ExitCode Guarded(string path, Func<CommandHost, ExitCode> work, Action<ReportedFault>? tell = null)
    {
        try
        {
            return work(_host);
        }
        catch (FileTroubleException trouble)
        {
            _host.Report(UsageCodes.FileTrouble, trouble.Message);
            tell?.Invoke(new ReportedFault(UsageCodes.FileTrouble, "error", trouble.Message) { File = path });
            return ExitCode.FileTrouble;
        }
    }

    private (KitReadResult Read, Plan? Plan) Read(string path, ParseResult parsed, CommandHost host)
    {
        var read = _day.Apply(parsed, KitInput.Read(path, host), host);
        var unprinted = read.HasErrors ? [] : UnprintedText.In(path, read);
        foreach (var warning in unprinted)
        {
            host.Report(warning);
        }

        read = read with { Diagnostics = [.. read.Diagnostics, .. unprinted] };
        return (read, read.HasErrors || !parsed.GetValue(_plan) ? null : Planner.Plan(read));
    }

    private static ExitCode Code(KitReadResult read, Plan? plan) =>
        read.HasErrors ? ExitCode.BadInput : plan is { Stands: false } ? ExitCode.PlanFails : ExitCode.Done;

    private ExitCode Tell(string path, ParseResult parsed, CommandHost host)
    {
        var (read, plan) = Read(path, parsed, host);
        if (read.HasErrors)
        {
            return ExitCode.BadInput;
        }

        host.Output.WriteLine($"{path}: the kit '{read.Kit!.Name}' reads without errors.{(plan is null ? " 'studiokit check --plan' also says whether it can be built and its cards hold." : $" {StudioVerdictText.Of(StudioVerdict.Of(plan))}")}");
        WriteDefaults(host, parsed.GetValue(_defaults) ? read.Defaults : []);
        return plan is null ? ExitCode.Done : Planner.Verdict(plan, host);
    }

    private static void WriteDefaults(CommandHost host, ValueList<DefaultUsed> defaults)
    {
        if (defaults.Count > 0)
        {
            host.Output.WriteLine(TextLines.Of([.. defaults.Select(entry => (entry.Path, entry.Value))], []));
        }
    }

    private static void Fill(JsonReport json, string path, KitReadResult read, Plan? plan)
    {
        json.Text("file", path).Text("kit", read.Kit?.Name).Flag("sound", !read.HasErrors);
        if (plan is not null)
        {
            StudioVerdictJson.Write(json, StudioVerdict.Of(plan));
        }

        FaultDocument.Fill(json, read.Diagnostics.Select(FaultDocument.Of))
            .List("defaults", read.Defaults, entry => json.Text("path", entry.Path).Text("value", entry.Value));
    }
}
