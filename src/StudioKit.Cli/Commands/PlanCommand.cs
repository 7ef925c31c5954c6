using System.CommandLine;
using System.CommandLine.Parsing;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit plan</c>: works everything out and prints it.</summary>
internal static class PlanCommand
{
    private const string Text =
        """
        Says whether the studio of a kit can be built and its cards hold, then prints panel, framings, starting exposures, frame, cuts, weight and checks.

        Exit code 1 says that the kit is sound but a check fails; the checks say which, what would mend it, and which keys of the kit that means.
        Of several kits, one that has errors does not stop the others, and the exit code is the highest.

        With --why, prints the light budget behind the exposures of one framing instead, each line with its stops, how far off it may be, and its
        source. With --compare, prints two kits side by side.

        With a date and a place, in the kit's site or by --date, --latitude and --longitude, it plans the day too: where the sun stands and shade falls, what
        light to expect, and when each part of the session can be begun.

        Example: studiokit plan kits/fen-edge.yaml --why "reed 55 at 1:1" --set-up white
        Example: studiokit plan kits/fen-edge.yaml --date 2026-06-14 --latitude 52.3 --longitude 5.1 --utc-offset +2
        Example: studiokit plan kits/*.yaml
        """;

    public static Command Create(CommandHost host)
    {
        var kits = KitInput.Arguments();
        var why = new Option<string?>("--why") { Description = "Name of a framing whose light budget is printed, e.g. \"reed 55 at 1:1\"; the whole plan where left out.", HelpName = "framing" };
        var setUp = new Option<string?>("--set-up") { Description = "With --why: only this set-up, e.g. white; every set-up where left out.", HelpName = "set-up" };
        var compare = new Option<string?>("--compare") { Description = "A second kit file to put beside the first, e.g. kits/heath-ultralight.yaml; none where left out.", HelpName = "kit" };
        var json = JsonOption.Create();
        var day = new DayOptions();
        var command = new Command("plan", Text) { kits, why, setUp, compare, json };
        day.AddTo(command);
        command.Validators.Add(result => Refuse(result, kits, why, setUp, compare));
        command.SetAction(parsed =>
        {
            var paths = parsed.GetRequiredValue(kits);
            var asJson = parsed.GetValue(json);
            KitReadResult Read(string path, CommandHost told) => day.Apply(parsed, KitInput.Read(path, told), told);
            return (int)(parsed.GetValue(why) is { } framing ? With(Read(paths[0], host), plan => Why(plan, framing, parsed.GetValue(setUp), asJson, host))
                : parsed.GetValue(compare) is { } second ? With(Read(paths[0], host), plan => Compare(plan, Read(second, host), asJson, host))
                : paths.Length > 1 ? Several([.. paths.Select(path => PlannedKit.Of(path, host, Read))], asJson, host)
                : With(Read(paths[0], host), plan => Whole(plan, asJson, host)));
        });
        return command;
    }

    private static void Refuse(CommandResult result, Argument<string[]> kits, Option<string?> why, Option<string?> setUp, Option<string?> compare)
    {
        var (hasWhy, hasCompare) = (result.GetResult(why) is not null, result.GetResult(compare) is not null);
        if (hasWhy && hasCompare)
        {
            result.AddError("--why and --compare exclude each other.");
        }
        else if (result.GetResult(setUp) is not null && !hasWhy)
        {
            result.AddError("--set-up goes with --why.");
        }
        else if ((hasWhy || hasCompare) && result.GetResult(kits)?.Tokens.Count > 1)
        {
            result.AddError($"{(hasWhy ? "--why" : "--compare")} goes with one kit.");
        }
    }

    private static ExitCode With(KitReadResult read, Func<Plan, ExitCode> print) => read.HasErrors ? ExitCode.BadInput : print(Planner.Plan(read));

    private static ExitCode Whole(Plan plan, bool asJson, CommandHost host)
    {
        if (asJson)
        {
            host.Output.WriteLine(PlanJson.Write(plan));
        }
        else
        {
            PlanTables.Write(plan, host);
        }

        return Planner.Verdict(plan, host);
    }

    // The verdict on each comes first here too, so that who plans a dozen sees at once which one to look at.
    private static ExitCode Several(IReadOnlyList<PlannedKit> kits, bool asJson, CommandHost host)
    {
        if (asJson)
        {
            host.Output.WriteLine(Document(kits));
        }
        else
        {
            host.Output.WriteLine(TextLines.Of([.. kits.Select(kit => (kit.Path, InShort(kit)))], []));
        }

        foreach (var plan in kits.Select(kit => kit.Plan).OfType<Plan>())
        {
            if (!asJson)
            {
                host.Output.WriteLine();
                PlanTables.Write(plan, host);
            }

            Planner.Verdict(plan, host);
        }

        return kits.Max(kit => kit.Code);
    }

    private static string InShort(PlannedKit kit) => (kit.Plan, kit.Code) switch
    {
        ({ } plan, _) => StudioVerdictText.Of(StudioVerdict.Of(plan)),
        (_, ExitCode.FileTrouble) => "Cannot be read.",
        _ => "Cannot be used yet, as it has errors.",
    };

    private static string Document(IReadOnlyList<PlannedKit> kits) => JsonReport.Document(json => json.List("kits", kits, kit =>
    {
        FaultDocument.Fill(json.Text("file", kit.Path).Count("exitCode", (int)kit.Code), kit.Faults);
        if (kit.Plan is { } plan)
        {
            json.Section("plan", () => PlanJson.Fill(json, plan));
        }
    }));

    private static ExitCode Why(Plan plan, string framing, string? setUp, bool asJson, CommandHost host)
    {
        var exposures = ChosenExposures.Of(plan, framing, setUp, out var problem);
        if (problem.Length > 0)
        {
            host.Report(UsageCodes.Refused, problem);
            return ExitCode.BadInput;
        }

        if (asJson)
        {
            host.Output.WriteLine(PlanJson.WriteWhy(plan, exposures));
        }
        else
        {
            WhyTables.Write(exposures, plan.Advice, host);
        }

        return exposures.All(exposure => exposure.IsUsable) ? ExitCode.Done : ExitCode.PlanFails;
    }

    // Which of the two stands is part of what is printed, so the comparison itself always succeeds.
    private static ExitCode Compare(Plan first, KitReadResult read, bool asJson, CommandHost host)
    {
        if (read.HasErrors)
        {
            return ExitCode.BadInput;
        }

        var comparison = new PlanComparison(first, Planner.Plan(read));
        if (asJson)
        {
            host.Output.WriteLine(ComparisonJson.Write(comparison));
        }
        else
        {
            ComparisonTables.Write(comparison, host);
        }

        return ExitCode.Done;
    }
}
