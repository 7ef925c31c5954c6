using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.Field;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.FieldFiles.Log;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log import</c>: takes an exported archive in again.</summary>
internal static class LogImportCommand
{
    private const string Text =
        """
        Takes an exported archive in again, all of it or nothing. What the log has already stays as it is, so that an archive taken in twice adds
        nothing; records that differ are named, and --replace takes the archive's. An exact record is never replaced by its coarse copy.

        Example: studiokit log import fen.zip
        """;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var archive = new Argument<string>("archive") { Description = "Darwin Core Archive that was exported here, e.g. fen.zip." };
        var replace = new Option<bool>("--replace") { Description = "Take the archive's records where the log has them otherwise; 'studiokit log undo' takes that back. Default: they stay." };
        var command = new Command("import", Text) { archive, replace };
        command.SetAction(parsed => (int)Import(host, parsed.GetRequiredValue(archive), parsed.GetRequiredValue(file), parsed.GetValue(replace)));
        return command;
    }

    // The archive first: one that cannot be taken in starts no log.
    private static ExitCode Import(CommandHost host, string archive, string file, bool replace)
    {
        using var stream = InputFile.Read(archive, File.OpenRead);
        var found = DarwinCoreArchive.Read(archive, stream);
        var notes = found.IsSound ? found.Diagnostics : [];
        return OpenLog.With(host, found, read => LogRules.Check(read, host.Clock.GetUtcNow()) is { Count: > 0 } faults
            ? FieldFaults.Print(host, faults)
            : OpenLog.OrStart(host, file, log => TakeIn(host, log, ArchiveMerge.Of(log.Read(), read), replace, notes)));
    }

    private static ExitCode TakeIn(CommandHost host, FieldLog log, ArchiveMerge merge, bool replace, IReadOnlyList<FieldDiagnostic> notes)
    {
        var taken = replace ? Together(merge.New, merge.Different) : merge.New;
        var faults = taken.Records.Any() ? log.Import(taken) : [];
        if (faults.Count > 0)
        {
            return FieldFaults.Print(host, faults);
        }

        host.Error.WriteLine($"{Records(merge.New.Records.Count())} taken in, {merge.Same} were here already.");
        if (merge.Exported > 0)
        {
            host.Error.WriteLine($"{(merge.Exported == 1 ? "1 subject is a coarse copy" : $"{merge.Exported} subjects are coarse copies")} of what this log has exactly, and left out.");
        }

        foreach (var (kind, id) in merge.Different.Records)
        {
            host.Error.WriteLine($"{kind.ToString().ToLowerInvariant()} {id}: differs from the archive; {(replace ? "the archive's was taken" : "kept as it is here, --replace takes the archive's")}.");
        }

        // Where nothing was taken in, nothing of it is missing here.
        foreach (var note in taken.Records.Any() ? notes : [])
        {
            host.Error.WriteLine($"note: {note}");
        }

        return ExitCode.Done;
    }

    private static string Records(int count) => count == 1 ? "1 record was" : $"{count} records were";

    private static LogSnapshot Together(LogSnapshot one, LogSnapshot other) => new(
        [.. one.Sessions, .. other.Sessions], [.. one.Subjects, .. other.Subjects], [.. one.Frames, .. other.Frames], [.. one.Measurements, .. other.Measurements]);
}
