using System.CommandLine;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Commands;

/// <summary>The parts of <c>studiokit log</c> that exchange records with museums and portals.</summary>
internal static class LogExchangeCommands
{
    public static Command Export(CommandHost host, Option<string> file)
    {
        var archive = new Option<string?>("--archive") { Description = "Darwin Core Archive to write, e.g. fen.zip." };
        var csv = new Option<string?>("--csv") { Description = "Occurrences as comma-separated text." };
        var geoJson = new Option<string?>("--geojson") { Description = "Occurrences as GeoJSON." };
        var title = new Option<string>("--title") { Description = "Title of the data set.", DefaultValueFactory = _ => "Field portraits" };
        var creator = new Option<string>("--creator") { Description = "Who answers for it.", DefaultValueFactory = _ => "" };
        var summary = new Option<string>("--abstract") { Description = "What it holds.", DefaultValueFactory = _ => "" };
        var licence = new Option<string>("--licence") { Description = "Terms of use.", DefaultValueFactory = _ => "" };
        var pictures = new Option<string>("--pictures") { Description = "Address of the folder with the pictures, ending in a slash.", DefaultValueFactory = _ => "" };
        var force = ForceOption.Create();
        var command = new Command("export", "Writes the log for others. Places of sensitive subjects leave coarser, and the records say so.")
        {
            archive, csv, geoJson, title, creator, summary, licence, pictures, force,
        };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
        {
            var snapshot = log.Read();
            var description = new DataSetDescription(
                parsed.GetRequiredValue(title), parsed.GetRequiredValue(creator), parsed.GetRequiredValue(summary), parsed.GetRequiredValue(licence),
                DateOnly.FromDateTime(host.Clock.GetLocalNow().Date), parsed.GetRequiredValue(pictures));
            var written = 0;
            foreach (var (target, make) in new (string?, Func<byte[]>)[]
            {
                (parsed.GetValue(archive), () => Archive(snapshot, description)),
                (parsed.GetValue(csv), () => Encoding.UTF8.GetBytes(DarwinCoreArchive.OccurrenceCsv(snapshot))),
                (parsed.GetValue(geoJson), () => Encoding.UTF8.GetBytes(OccurrenceGeoJson.Write(snapshot))),
            })
            {
                if (target is not null)
                {
                    WrittenFiles.In(WrittenFiles.FolderOf(target), parsed.GetValue(force)).Write([(Path.GetFileName(target), make())]);
                    host.Error.WriteLine($"wrote {target}");
                    written++;
                }
            }

            return Told(host, written);
        }));
        return command;
    }

    public static Command Import(CommandHost host, Option<string> file)
    {
        var archive = new Argument<string>("archive") { Description = "Darwin Core Archive that was exported here." };
        var command = new Command("import", "Takes an exported archive in again, all of it or nothing.") { archive };
        command.SetAction(parsed => (int)LogCommand.With(host, parsed.GetRequiredValue(file), log =>
        {
            var path = parsed.GetRequiredValue(archive);
            using var stream = InputFile.Read(path, File.OpenRead);
            var read = DarwinCoreArchive.Read(path, stream);
            return FieldFaults.Print(host, read.IsSound ? log.Import(read.Value) : read.Diagnostics);
        }));
        return command;
    }

    private static ExitCode Told(CommandHost host, int written)
    {
        if (written == 0)
        {
            host.Error.WriteLine("studiokit: name --archive, --csv or --geojson.");
            return ExitCode.BadInput;
        }

        return ExitCode.Done;
    }

    private static byte[] Archive(LogSnapshot snapshot, DataSetDescription description)
    {
        using var stream = new MemoryStream();
        DarwinCoreArchive.Write(snapshot, description, stream);
        return stream.ToArray();
    }
}
