using System.CommandLine;
using System.CommandLine.Parsing;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Planning;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit plan</c>: works everything out and prints it.</summary>
internal static class PlanCommand
{
    private const string Text =
        """
        Works out panel, framings, starting exposures, frame, cuts, weight and checks of a kit, and prints them.

        Exit code 1 says that the kit is sound but a check fails; the checks say which, and what would mend it.

        With --why, prints the light budget behind the exposures of one framing instead, each line with its stops, how far off it may be, and its
        source. With --compare, prints two kits side by side.

        Example: studiokit plan kits/fen-edge.yaml --why "reed 55 at 1:1" --set-up white
        """;

    public static Command Create(CommandHost host)
    {
        var kit = KitInput.Argument();
        var why = new Option<string?>("--why") { Description = "Name of a framing whose light budget is printed, e.g. \"reed 55 at 1:1\".", HelpName = "framing" };
        var setUp = new Option<string?>("--set-up") { Description = "With --why: only this set-up.", HelpName = "set-up" };
        var compare = new Option<string?>("--compare") { Description = "A second kit file to put beside the first.", HelpName = "kit" };
        var json = JsonOption.Create();
        var command = new Command("plan", Text) { kit, why, setUp, compare, json };
        command.Validators.Add(result => Refuse(result, why, setUp, compare));
        command.SetAction(parsed =>
        {
            var read = KitInput.Read(parsed.GetRequiredValue(kit), host);
            if (read.HasErrors)
            {
                return (int)ExitCode.BadInput;
            }

            var plan = Planner.Plan(read);
            var asJson = parsed.GetValue(json);
            return (int)(parsed.GetValue(why) is { } framing ? Why(plan, framing, parsed.GetValue(setUp), asJson, host)
                : parsed.GetValue(compare) is { } second ? Compare(plan, second, asJson, host)
                : Whole(plan, asJson, host));
        });
        return command;
    }

    private static void Refuse(CommandResult result, Option<string?> why, Option<string?> setUp, Option<string?> compare)
    {
        if (result.GetResult(why) is not null && result.GetResult(compare) is not null)
        {
            result.AddError("--why and --compare exclude each other.");
        }
        else if (result.GetResult(setUp) is not null && result.GetResult(why) is null)
        {
            result.AddError("--set-up goes with --why.");
        }
    }

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

    private static ExitCode Why(Plan plan, string framing, string? setUp, bool asJson, CommandHost host)
    {
        var exposures = ChosenExposures.Of(plan, framing, setUp, out var problem);
        if (problem.Length > 0)
        {
            host.Error.WriteLine(problem);
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
    private static ExitCode Compare(Plan first, string path, bool asJson, CommandHost host)
    {
        var read = KitInput.Read(path, host);
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
