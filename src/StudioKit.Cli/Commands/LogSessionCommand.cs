using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log session</c>: opens a session.</summary>
internal static class LogSessionCommand
{
    private const string Text =
        """
        Opens a session: a place, a time, people. Starts the log where there is none. Prints the session's short identifier.

        Example: studiokit log session --name "Wisplow Fen, evening" --latitude 52.612 --longitude -21.543 --uncertainty-m 30
        Example: studiokit log session --start 2026-05-09 --locality "Wisplow Fen"
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var fields = SessionFields.Create(host);
        var command = new Command("session", Text);
        fields.AddTo(command);
        command.SetAction(parsed => (int)OpenLog.OrStart(host, parsed.GetRequiredValue(file), log =>
            LogCommand.Report(host, log, log.Save(fields.Apply(parsed, new FieldSession { Start = host.Clock.GetLocalNow() })), session => session.Id)));
        return command;
    }
}
