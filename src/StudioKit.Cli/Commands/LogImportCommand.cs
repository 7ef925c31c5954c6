using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.Field.Log.Archive;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log import</c>: takes an exported archive in again.</summary>
internal static class LogImportCommand
{
    public static Command Create(CommandHost host, Option<string> file)
    {
        var archive = new Argument<string>("archive") { Description = "Darwin Core Archive that was exported here, e.g. fen.zip." };
        var command = new Command("import", "Takes an exported archive in again, all of it or nothing.") { archive };
        command.SetAction(parsed => (int)OpenLog.OrStart(host, parsed.GetRequiredValue(file), log =>
        {
            var path = parsed.GetRequiredValue(archive);
            using var stream = InputFile.Read(path, File.OpenRead);
            var read = DarwinCoreArchive.Read(path, stream);
            return FieldFaults.Print(host, read.IsSound ? log.Import(read.Value) : read.Diagnostics);
        }));
        return command;
    }
}
