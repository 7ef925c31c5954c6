using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.Cli.Running;
using StudioKit.Cli.Tables;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;
using StudioKit.Writing;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log export</c>: hands records to museums and portals, and shows first what leaves.</summary>
internal sealed class LogExportCommand
{
    private const string Text =
        """
        Writes the log for others, as a Darwin Core Archive, comma-separated text or GeoJSON.

        Where a subject is sensitive, its whole session is told by a cell of the graticule and leaves only what tells no place: names, habitat,
        protocol, remarks, captions, file names, identifiers and times stay or are made coarser, unless you release them. Look first with
        --preview: it lists every field with its value and why it leaves or stays, writes nothing, and is what the export is made from.

        Cells are written as the standard has them. It knows no guard for cells that begin with = + - @, which spreadsheets take for formulas:
        import such a file as text.

        Pictures of sensitive sessions go by neutral names, and their addresses are told only where --originals and --copies lay out clean copies of
        them: without coordinates, serial numbers, names, makers' blocks, small pictures or any text. A colour profile stays, and what the picture shows.

        Example: studiokit log export --preview
        Example: studiokit log export --archive fen.zip --title "Fen portraits" --creator "A. Sedge"
        Example: studiokit log export --archive fen.zip --pictures https://example.org/fen/ --originals raw --copies upload
        Example: studiokit log export --geojson fen.geojson --release habitat --release captions
        """;

    private readonly CommandHost _host;
    private readonly Option<string?> _archive = new("--archive") { Description = "Darwin Core Archive to write, e.g. fen.zip; none where left out.", HelpName = "file" };
    private readonly Option<string?> _csv = new("--csv") { Description = "Occurrences as comma-separated text, e.g. fen.csv; none where left out.", HelpName = "file" };
    private readonly Option<string?> _geoJson = new("--geojson") { Description = "Occurrences as GeoJSON, e.g. fen.geojson; none where left out.", HelpName = "file" };
    private readonly Option<bool> _preview = new("--preview") { Description = "List all that leaves and all that stays, and write nothing." };
    private readonly Option<bool> _json = new("--json") { Description = "With --preview: one JSON document in place of text." };
    private readonly Option<string> _title = Words("--title", "Title of the data set, e.g. \"Fen portraits\".", "Field portraits");
    private readonly Option<string> _creator = Words("--creator", "Who answers for it, e.g. \"A. Sedge\"; default: nobody is named.", "");
    private readonly Option<string> _abstract = Words("--abstract", "What it holds, e.g. \"Portraits of small animals\"; default: nothing said.", "");
    private readonly Option<string> _licence = Words("--licence", "Terms of use, best an address, e.g. https://creativecommons.org/licenses/by/4.0/; default: nothing said.", "");

    private readonly Option<string> _pictures = Words(
        "--pictures",
        "Address of the folder with the pictures, e.g. https://example.org/fen/; of sensitive pictures only that of clean copies is told. Default: file names alone.", "");

    private readonly Option<string?> _originals = new("--originals") { Description = "With --copies: folder with the original pictures, e.g. raw. Default: none is read.", HelpName = "folder" };
    private readonly Option<string?> _copies = new("--copies") { Description = "Folder to lay out copies of the pictures in, e.g. upload. Default: none are made.", HelpName = "folder" };

    private readonly Option<bool> _force = ForceOption.Create();
    private readonly ReleaseOptions _release = new();

    private LogExportCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host, Option<string> file)
    {
        var export = new LogExportCommand(host);
        var command = new Command("export", Text)
        {
            export._preview, export._json, export._archive, export._csv, export._geoJson, export._title, export._creator, export._abstract,
            export._licence, export._pictures, export._originals, export._copies, export._force,
        };
        export._release.AddTo(command);
        command.SetAction(parsed => (int)OpenLog.ToRead(host, parsed.GetRequiredValue(file), log => LogDamage.Told(host, parsed.GetRequiredValue(file), log, export.Run(parsed, parsed.GetRequiredValue(file), log.Index()))));
        return command;
    }

    private static Option<string> Words(string name, string description, string fallback) => new(name)
    {
        Description = description,
        DefaultValueFactory = _ => fallback,
        HelpName = "text",
    };

    private ExitCode Run(ParseResult parsed, string file, LogIndex index)
    {
        if (_release.Read(parsed, _host, index) is not { } choices)
        {
            return ExitCode.BadInput;
        }

        if (parsed.GetValue(_originals) is null != parsed.GetValue(_copies) is null)
        {
            _host.Error.WriteLine("studiokit: --originals and --copies go together, e.g. --originals raw --copies upload.");
            return ExitCode.BadInput;
        }

        var folder = parsed.GetRequiredValue(_pictures);
        var release = LogRelease.Of(index.Log, choices with { PictureFolder = folder, HasCleanPictures = parsed.GetValue(_copies) is not null });
        var description = new DataSetDescription(
            parsed.GetRequiredValue(_title), parsed.GetRequiredValue(_creator), parsed.GetRequiredValue(_abstract), parsed.GetRequiredValue(_licence),
            DateOnly.FromDateTime(_host.Clock.GetLocalNow().Date));
        var code = parsed.GetValue(_preview) ? Show(parsed, release, index) : Write(parsed, file, release, description);
        ReleasePreview.Notes(_host.Error, index, [.. release.Notes, .. DescriptionCheck.Notes(release, description, folder)]);
        return code;
    }

    private ExitCode Show(ParseResult parsed, LogRelease release, LogIndex index)
    {
        if (parsed.GetValue(_json))
        {
            ReleasePreview.Json(_host.Output, release, index);
        }
        else
        {
            using var lines = new LinesTogether(_host.Output);
            ReleasePreview.Print(lines, release, index);
        }

        return ExitCode.Done;
    }

    private ExitCode Write(ParseResult parsed, string file, LogRelease release, DataSetDescription description)
    {
        var targets = new (string? Path, Action<Stream> Write)[]
        {
            (parsed.GetValue(_archive), stream => DarwinCoreArchive.Write(release, description, stream)),
            (parsed.GetValue(_csv), stream => DarwinCoreArchive.WriteOccurrences(release, stream)),
            (parsed.GetValue(_geoJson), stream => OccurrenceGeoJson.Write(release, stream)),
        };
        if (Array.TrueForAll(targets, target => target.Path is null))
        {
            _host.Error.WriteLine("studiokit: name --archive, --csv or --geojson, e.g. --archive fen.zip; or look first with --preview.");
            return ExitCode.BadInput;
        }

        var asked = targets.Where(target => target.Path is not null).Select(target => (Path: target.Path!, target.Write)).ToList();
        var copies = new PictureCopies(release, parsed.GetValue(_originals), parsed.GetValue(_copies));
        using var batch = FileBatch.Open(
            new FileBatchRequest
            {
                Targets = [.. asked.Select(target => target.Path).Concat(copies.Targets).Select(path => new FileTarget(path))],
                Inputs = [.. LogCommand.FilesOf(file), .. copies.Originals],
                Force = parsed.GetValue(_force),
            },
            _host.Stop);
        asked.ForEach(target => batch.Write(target.Path, target.Write));
        if (copies.Write(batch) is { } refusal)
        {
            return FieldFaults.Print(_host, [refusal]);
        }

        OutputFiles.Committed(_host, batch);
        asked.ForEach(target => _host.Error.WriteLine($"wrote {target.Path}"));
        Tell(copies, parsed.GetValue(_copies));
        return ExitCode.Done;
    }

    private void Tell(PictureCopies copies, string? folder)
    {
        if (folder is not null)
        {
            _host.Error.WriteLine($"{copies.Targets.Count} pictures copied to {folder}; put them at the address of --pictures.");
            copies.Missing.ForEach(name => _host.Error.WriteLine($"{name}: its original is not there, so it was not copied."));
        }
    }
}
