using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log undo</c> and <c>log redo</c>: take changes back, one after the other, and make them again.</summary>
internal static class LogUndoCommand
{
    private const string UndoText =
        """
        Takes the last change back, all of it; once more, the one before. 'studiokit log redo' makes it again.

        Example: studiokit log undo
        """;

    private const string RedoText =
        """
        Makes the change again that was taken back last, as long as nothing new was recorded since.

        Example: studiokit log redo
        """;

    public static Command Undo(CommandHost host, Option<string> file) => Of("undo", UndoText, host, file, log => log.Undo());

    public static Command Redo(CommandHost host, Option<string> file) => Of("redo", RedoText, host, file, log => log.Redo());

    private static Command Of(string name, string text, CommandHost host, Option<string> file, Func<FieldLog, FieldResult<LogChange>> step)
    {
        var command = new Command(name, text);
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log => OpenLog.With(host, step(log), change =>
        {
            host.Output.Write(HistoryLines.Of(change, log.Index()));
            return ExitCode.Done;
        })));
        return command;
    }
}
