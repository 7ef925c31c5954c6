using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log delete</c>: takes a record out.</summary>
internal static class LogDeleteCommand
{
    private const string Text =
        """
        Takes a record out of the log; picture files stay where they are. The history keeps it, and 'studiokit log undo' brings it back.
        A record that others belong to goes with --with-all only.

        Example: studiokit log delete d4t
        Example: studiokit log delete k7m --with-all
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var reference = References.Of("record");
        var all = new Option<bool>("--with-all") { Description = "Take out what belongs to it, too: a session's subjects, a subject's frames and measurements." };
        var command = new Command("delete", Text) { reference, all };
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log =>
            OpenLog.With(host, log.Index().Find(parsed.GetRequiredValue(reference)), found =>
            {
                var going = log.Read().With(found.Id);
                var with = Belonging(going, found.Kind);
                if (with.Length > 0 && !parsed.GetValue(all))
                {
                    host.Error.WriteLine($"studiokit: {found} holds {with}; --with-all takes them out with it. Nothing was changed.");
                    return ExitCode.BadInput;
                }

                return OpenLog.With(host, log.Delete(found.Id), _ =>
                {
                    host.Output.WriteLine($"took out {RecordWords.Of(found)}{(with.Length > 0 ? " with " + with : "")}; 'studiokit log undo' brings it back");
                    return ExitCode.Done;
                });
            })));
        return command;
    }

    private static string Belonging(LogSnapshot going, LogRecordKind kind) => string.Join(", ", going.Records
        .Where(record => record.Kind != kind).GroupBy(record => record.Kind).Select(group => RecordWords.Count(group.Key, group.Count())));
}
