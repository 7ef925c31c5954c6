using StudioKit.Cutting;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Wording;

namespace StudioKit.Cli;

/// <summary>Planning as the command does it.</summary>
internal static class Planner
{
    // Planning itself knows only a quick first fit, as it must run without native libraries.
    public static PlanningServices Services { get; } = new()
    {
        Bars = new FirstFitThenSearchBars(new OptimalBarCutPlanner()),
        Sheets = new FirstFitThenSearchSheets(new OptimalSheetCutPlanner()),
    };

    public static Plan Plan(KitReadResult read) => KitPlanner.Plan(read, Services);

    /// <summary>Says which checks fail, and gives the exit code.</summary>
    public static ExitCode Verdict(Plan plan, CommandHost host)
    {
        foreach (var check in plan.Checks.Where(check => !check.Passed))
        {
            host.Error.WriteLine($"check fails: {CheckText.Name(check)}: {CheckText.Shortfall(check)}. {CheckText.Remedy(check)} {CheckText.Keys(check, plan)}".TrimEnd());
        }

        return plan.Stands ? ExitCode.Done : ExitCode.PlanFails;
    }
}
