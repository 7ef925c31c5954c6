using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.FieldFiles.Log.Rescue;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log rescue</c>: saves what can be read of a damaged log.</summary>
internal static class LogRescueCommand
{
    private const string Text =
        """
        Reads what can be read of a damaged log, row by row, and puts it into a new one; says what was lost and what is doubtful. The damaged log is
        left as it is. Exit code 1 where anything was lost or is doubtful.

        Example: studiokit log rescue field.log field-rescued.log
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var old = new Argument<string>("old") { Description = "The damaged log, e.g. field.log." };
        var target = new Argument<string>("new") { Description = "The new log; there must be no file of its name, e.g. field-rescued.log." };
        var command = new Command("rescue", Text) { old, target };
        command.Validators.Add(result =>
        {
            if (result.GetResult(file) is { Implicit: false })
            {
                result.AddError("A rescue names both logs without --log, the damaged one first, e.g. studiokit log rescue field.log field-rescued.log.");
            }
        });
        command.SetAction(parsed => (int)OpenLog.With(host, LogRescue.Read(parsed.GetRequiredValue(old)), rescued =>
        {
            var faults = LogRescue.Write(rescued, parsed.GetRequiredValue(target), host.Clock);
            return faults.Count > 0 ? FieldFaults.Print(host, faults) : Tell(host, rescued, parsed.GetRequiredValue(target));
        }));
        return command;
    }

    private static ExitCode Tell(CommandHost host, RescuedLog rescued, string target)
    {
        var counts = rescued.Log.Records.GroupBy(record => record.Kind).Select(group => RecordWords.Count(group.Key, group.Count()));
        host.Output.WriteLine($"wrote {target}: {string.Join(", ", counts)}");
        foreach (var note in rescued.Notes)
        {
            host.Error.WriteLine(RescueWords.Of(note));
        }

        host.Error.WriteLine(rescued.IsWhole ? "Everything was read as it was written." : "The rest was read as it was written.");
        return rescued.IsWhole ? ExitCode.Done : ExitCode.PlanFails;
    }
}
