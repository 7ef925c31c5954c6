using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log</c>: keeps the record of the field.</summary>
internal static class LogCommand
{
    private const string Text =
        """
        Keeps the field log: sessions, subjects, frames, measurements, and how long animals are held. One SQLite file.

        Holding times, permits and handling follow local rules and licensed practice; the limit here only reminds.

        Example: studiokit log session --start 2026-05-09T14:00+01:00 --locality "Wisplow Fen" --latitude 52.612 --longitude -21.543
        Example: studiokit log hold start SUBJECT --limit "10 min"
        Example: studiokit log plates --pictures scaled --out plates.pdf --common-scale
        Example: studiokit log export --archive fen.zip --title "Fen portraits" --creator "A. Sedge"
        """;

    public static Command Create(CommandHost host)
    {
        var file = new Option<string>("--log") { Description = "The log file.", DefaultValueFactory = _ => "field.log", Recursive = true };
        return new Command("log", Text)
        {
            file,
            LogRecordCommands.Session(host, file),
            LogRecordCommands.Subject(host, file),
            LogRecordCommands.Frame(host, file),
            LogRecordCommands.Measurement(host, file),
            LogHoldCommand.Create(host, file),
            LogListCommand.Create(host, file),
            LogExportCommand.Create(host, file),
            LogImportCommand.Create(host, file),
            LogPlatesCommand.Create(host, file),
        };
    }

    /// <summary>Opens the log for one action.</summary>
    public static ExitCode With(CommandHost host, string path, Func<FieldLog, ExitCode> action)
    {
        // Time-ordered identifiers keep the record's own order wherever they are sorted.
        var opened = FieldLog.Open(path, host.Clock, () => "urn:uuid:" + Guid.CreateVersion7(host.Clock.GetUtcNow()));
        using var log = opened.Value;
        return log is null ? FieldFaults.Print(host, opened.Diagnostics) : action(log);
    }

    /// <summary>Prints the identifier of what was saved, or what is wrong with it.</summary>
    public static ExitCode Report<T>(CommandHost host, FieldResult<T> saved, Func<T, string> id)
        where T : class
    {
        if (saved.IsSound)
        {
            host.Output.WriteLine(id(saved.Value));
        }

        return FieldFaults.Print(host, saved.Diagnostics);
    }

    /// <summary>Looks a subject up.</summary>
    public static FieldSubject? Find(CommandHost host, FieldLog log, string id)
    {
        var subject = log.Read().Subjects.FirstOrDefault(candidate => candidate.Id == id);
        if (subject is null)
        {
            host.Error.WriteLine($"studiokit: the log has no subject '{id}'; 'studiokit log list' shows them.");
        }

        return subject;
    }
}
