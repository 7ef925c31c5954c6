using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log subject</c>: adds an animal or plant.</summary>
internal static class LogSubjectCommand
{
    private const string Text =
        """
        Adds an animal or plant to a session. Prints its short identifier.

        Example: studiokit log subject --name Dolomedes --qualifier "cf. plantarius" --stage adult
        Example: studiokit log subject "Wisplow Fen, evening" --name "Drosera anglica"
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var session = References.OptionalSession();
        var fields = SubjectFields.Create(host);
        var command = new Command("subject", Text) { session };
        fields.AddTo(command);
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log =>
            OpenLog.With(host, NamedSession.Of(host, log.Read(), log.Index(), parsed.GetValue(session)), found =>
                LogCommand.Report(host, log, log.Save(fields.Apply(parsed, new FieldSubject { SessionId = found.Id })), subject => subject.Id))));
        return command;
    }
}
