using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Json;
using StudioKit.Cli.Tables;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit plan</c>: works everything out and prints it.</summary>
internal static class PlanCommand
{
    private const string Text =
        """
        Works out panel, framings, starting exposures, frame, cuts, weight and checks of a kit, and prints them.

        Exit code 1 says that the kit is sound but a check fails; the checks say which, and what would mend it.

        Example: studiokit plan kits/fen-edge.yaml
        """;

    public static Command Create(CommandHost host)
    {
        var kit = KitInput.Argument();
        var json = JsonOption.Create();
        var command = new Command("plan", Text) { kit, json };
        command.SetAction(parsed =>
        {
            var read = KitInput.Read(parsed.GetRequiredValue(kit), host);
            if (read.HasErrors)
            {
                return (int)ExitCode.BadInput;
            }

            var plan = Planner.Plan(read);
            if (parsed.GetValue(json))
            {
                host.Output.WriteLine(PlanJson.Write(plan));
            }
            else
            {
                PlanTables.Write(plan, host);
            }

            return (int)Planner.Verdict(plan, host);
        });
        return command;
    }
}
