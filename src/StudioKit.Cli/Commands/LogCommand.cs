using System.CommandLine;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log</c>: keeps the record of the field.</summary>
internal static class LogCommand
{
    private const string Text =
        """
        Keeps the field log: sessions, subjects, frames, measurements, and how long animals are held. One SQLite file.

        A record is called by its short identifier (k7m), its name where only one has it, or 'last'. Every change is kept and can be taken back.

        Holding times, permits and handling follow local rules and licensed practice; the limit here only reminds.

        Example: studiokit log session --start 2026-05-09T14:00+01:00 --locality "Wisplow Fen" --latitude 52.612 --longitude -21.543
        Example: studiokit log subject --name Dolomedes
        Example: studiokit log hold start last --limit "10 min"
        Example: studiokit log undo
        Example: studiokit log plates --pictures scaled --out plates.pdf --common-scale
        Example: studiokit log export --archive fen.zip --title "Fen portraits" --creator "A. Sedge"
        """;

    public static Command Create(CommandHost host)
    {
        var file = new Option<string>("--log") { Description = "The log file, e.g. fen.log.", DefaultValueFactory = _ => "field.log", Recursive = true };
        return new Command("log", Text)
        {
            file,
            LogSessionCommand.Create(host, file),
            LogSubjectCommand.Create(host, file),
            LogFrameCommand.Create(host, file),
            LogMeasureCommand.Create(host, file),
            LogHoldCommand.Create(host, file),
            LogEnterCommand.Create(host, file),
            LogListCommand.Create(host, file),
            LogEditCommand.Create(host, file),
            LogDeleteCommand.Create(host, file),
            LogUndoCommand.Undo(host, file),
            LogUndoCommand.Redo(host, file),
            LogHistoryCommand.Create(host, file),
            LogRescueCommand.Create(host, file),
            LogExportCommand.Create(host, file),
            LogImportCommand.Create(host, file),
            LogPlatesCommand.Create(host, file),
        };
    }

    /// <summary>The files that a log consists of; the last two are there while it is open, or after a crash.</summary>
    public static IReadOnlyList<string> FilesOf(string path) => [path, path + "-wal", path + "-shm"];

    /// <summary>Prints the short identifier of what was saved, or what is wrong with it.</summary>
    public static ExitCode Report<T>(CommandHost host, FieldLog log, FieldResult<T> saved, Func<T, string> id)
        where T : class => OpenLog.With(host, saved, record =>
        {
            var entry = log.Index().Entry(id(record))!;
            host.Output.WriteLine(entry.ShortId);
            host.Error.WriteLine(RecordWords.Of(entry));
            return ExitCode.Done;
        });
}
