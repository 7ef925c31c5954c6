using StudioKit.Cli.Files;
using StudioKit.Cli.Usage;
using StudioKit.Kits;
using StudioKit.Planning;

namespace StudioKit.Cli;

/// <summary>A kit that was named on the command line, and what came of planning it.</summary>
/// <param name="Path">How it was named.</param>
/// <param name="Plan">The plan; none where the kit has errors or cannot be read.</param>
/// <param name="Code">What it means for the exit code.</param>
/// <param name="Faults">What is wrong with it.</param>
internal sealed record PlannedKit(string Path, Plan? Plan, ExitCode Code, IList<ReportedFault> Faults)
{
    /// <summary>Plans a kit; what is wrong is printed and does not stop the next one.</summary>
    /// <param name="path">How it was named.</param>
    /// <param name="host">Told what is wrong.</param>
    /// <param name="reader">Reads it.</param>
    public static PlannedKit Of(string path, CommandHost host, Func<string, CommandHost, KitReadResult> reader)
    {
        var own = host with { Faults = [] };
        try
        {
            var read = reader(path, own);
            var plan = read.HasErrors ? null : Planner.Plan(read);
            return new(path, plan, plan is null ? ExitCode.BadInput : plan.Stands ? ExitCode.Done : ExitCode.PlanFails, own.Faults);
        }
        catch (FileTroubleException trouble)
        {
            own.Report(UsageCodes.FileTrouble, trouble.Message);
            return new(path, null, ExitCode.FileTrouble, own.Faults);
        }
    }
}
