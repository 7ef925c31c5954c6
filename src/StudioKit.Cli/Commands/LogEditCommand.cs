using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log edit</c>: changes what is recorded.</summary>
internal static class LogEditCommand
{
    private const string Text =
        """
        Changes fields of a record; those not named stay, and the history keeps what was there. --clear empties a field.

        Example: studiokit log edit subject last --name Dolomedes --qualifier "cf. plantarius"
        Example: studiokit log edit session k7m --end 2026-05-09T17:30 --clear remarks
        Example: studiokit log edit frame IMG_0001.jpg --subject d4t
        """;

    public static Command Create(CommandHost host, Option<string> file) => new("edit", Text)
    {
        Of("session", host, file, SessionFields.Create(host), (index, reference) => index.Session(reference), (log, _, session) => log.Save(session), session => session.Id),
        Subject(host, file),
        Frame(host, file),
        Of("measurement", host, file, MeasurementFields.ForEdit(host), (index, reference) => index.Measurement(reference), (log, _, measurement) => log.Save(measurement), measurement => measurement.Id),
    };

    private static Command Subject(CommandHost host, Option<string> file)
    {
        var session = new Option<string?>("--session") { Description = "Session that it belongs to, e.g. k7m; its frames go with it. It stays where it is where left out.", HelpName = "session" };
        var command = Of(
            "subject", host, file, SubjectFields.ForEdit(host), (index, reference) => index.Subject(reference), (log, _, subject) => log.Save(subject), subject => subject.Id,
            (parsed, index, subject) => Moved(parsed.GetValue(session), index.Session, subject, found => subject with { SessionId = found.Id }));
        command.Options.Add(session);
        return command;
    }

    private static Command Frame(CommandHost host, Option<string> file)
    {
        var subject = new Option<string?>("--subject") { Description = "Subject that it shows, e.g. d4t; it stays with its own where left out.", HelpName = "subject" };
        var command = Of(
            "frame", host, file, FrameFields.ForEdit(host), (index, reference) => index.Frame(reference), (log, before, frame) => log.Move(before.Id, frame), frame => frame.Id,
            (parsed, index, frame) => Moved(parsed.GetValue(subject), index.Subject, frame, found => frame with { SubjectId = found.Id }));
        command.Options.Add(subject);
        return command;
    }

    private static FieldResult<T> Moved<T, TOwner>(string? reference, Func<string, FieldResult<TOwner>> find, T record, Func<TOwner, T> move)
        where T : class
        where TOwner : class
    {
        if (reference is null)
        {
            return record;
        }

        var owner = find(reference);
        return owner.IsSound ? move(owner.Value) : owner.Diagnostics[0];
    }

    private static Command Of<T>(
        string kind, CommandHost host, Option<string> file, RecordFields<T> fields, Func<LogIndex, string, FieldResult<T>> find,
        Func<FieldLog, T, T, FieldResult<T>> save, Func<T, string> id, Func<ParseResult, LogIndex, T, FieldResult<T>>? move = null)
        where T : class
    {
        var reference = References.Of(kind);
        var clear = new Option<string[]>("--clear") { Description = $"Field to empty, e.g. {fields.Clearable.First()}, once for each: {string.Join(", ", fields.Clearable)}. None where left out.", HelpName = "field", AllowMultipleArgumentsPerToken = true };
        clear.AcceptOnlyFromAmong([.. fields.Clearable]);
        var command = new Command(kind, $"Changes a {kind}.\n\nExample: studiokit log edit {kind} last --clear {fields.Clearable.First()}") { reference, clear };
        fields.AddTo(command, "It stays as it is where left out.");
        command.SetAction(parsed => (int)OpenLog.ToWrite(host, parsed.GetRequiredValue(file), log => OpenLog.With(host, find(log.Index(), parsed.GetRequiredValue(reference)), before =>
        {
            var cleared = parsed.GetValue(clear) ?? [];
            if (fields.GivenAndCleared(parsed, cleared).FirstOrDefault() is { } both)
            {
                host.Error.WriteLine($"studiokit: --{both} and --clear {both} cannot both be meant; give one of them.");
                return ExitCode.BadInput;
            }

            var changed = fields.Clear(fields.Apply(parsed, before), cleared);
            return OpenLog.With(host, move is null ? changed : move(parsed, log.Index(), changed), after => LogCommand.Report(host, log, save(log, before, after), id));
        })));
        return command;
    }
}
