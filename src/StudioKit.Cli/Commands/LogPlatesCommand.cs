using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Files;
using StudioKit.Cli.Records;
using StudioKit.Cli.Tables;
using StudioKit.Field.Log;
using StudioKit.Field.Log.Archive;
using StudioKit.Field.Log.Release;
using StudioKit.Field.Plates;
using StudioKit.FieldFiles.Plates;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit log plates</c>: prints the portraits of the log at true scale.</summary>
internal sealed class LogPlatesCommand
{
    private const string Text =
        """
        Prints the logged frames that have a scale as catalogue plates: several to a page on white, captioned from the log, at one common
        true scale or each as large as fits with its bar. A picture that "scale" drew a bar into keeps that one alone; the scale that its sidecar gives is
        used. What is left out is said, here and on the last page. Plates of sensitive sessions tell only what an export does.

        Example: studiokit log plates --pictures scaled --out plates.pdf --common-scale --title "Spiders of the fen"
        """;

    private readonly CommandHost _host;
    private readonly Option<string> _log;
    private readonly Option<string> _pictures = new("--pictures") { Description = "Folder with the picture files, e.g. scaled.", Required = true, HelpName = "folder" };
    private readonly Option<string> _out = new("--out") { Description = "The PDF to write, e.g. plates.pdf.", Required = true, HelpName = "file" };
    private readonly Option<bool> _common = new("--common-scale") { Description = "All portraits at one scale, to be compared." };
    private readonly Option<int> _columns = new("--columns") { Description = "Portraits side by side, e.g. 3.", DefaultValueFactory = _ => 2 };
    private readonly Option<int> _rows = new("--rows") { Description = "Portraits one above the other, e.g. 4.", DefaultValueFactory = _ => 3 };
    private readonly Option<string> _title = new("--title") { Description = "Title of the plates, e.g. \"Spiders of the fen\".", DefaultValueFactory = _ => "Field portraits" };
    private readonly Option<string?> _date = new("--date") { Description = "Date to print, e.g. 2026-05-09; none where left out.", HelpName = "date" };
    private readonly Option<bool> _force = ForceOption.Create();
    private readonly ReleaseOptions _release = new();

    private LogPlatesCommand(CommandHost host, Option<string> log) => (_host, _log) = (host, log);

    public static Command Create(CommandHost host, Option<string> log)
    {
        var plates = new LogPlatesCommand(host, log);
        var command = new Command("plates", Text)
        {
            plates._pictures, plates._out, plates._common, plates._columns, plates._rows, plates._title, plates._date, plates._force,
        };
        plates._release.AddTo(command);
        command.SetAction(parsed => (int)OpenLog.ToRead(host, parsed.GetRequiredValue(log), record => LogDamage.Told(host, parsed.GetRequiredValue(log), record, plates.Run(parsed, record.Read(), record.Index()))));
        return command;
    }

    private ExitCode Run(ParseResult parsed, LogSnapshot log, LogIndex index)
    {
        DateOnly day = default;
        var date = parsed.GetValue(_date);
        if (date is not null && !DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            return Refuse($"--date: '{date}' is not a date; write it as 2026-05-09.");
        }

        if (parsed.GetValue(_columns) is < 1 or > 6 || parsed.GetValue(_rows) is < 1 or > 8)
        {
            return Refuse("a page takes 1 to 6 portraits across and 1 to 8 down.");
        }

        if (_release.Read(parsed, _host, index) is not { } choices)
        {
            return ExitCode.BadInput;
        }

        var folder = parsed.GetRequiredValue(_pictures);
        var release = LogRelease.Of(log, choices);
        ReleasePreview.Notes(_host.Error, index, DescriptionCheck.Notes(release, new DataSetDescription(parsed.GetRequiredValue(_title), "", "", "", day), ""));
        var chosen = CataloguePlates.FromLog(release, frame => PlateImage.Find(folder, frame));
        var format = new PlateFormat { Columns = parsed.GetValue(_columns), Rows = parsed.GetValue(_rows) };
        var (pictures, plates, pages, notes) = LayOut(parsed, chosen, format);
        foreach (var note in notes)
        {
            _host.Error.WriteLine(note);
        }

        if (pages.Count == 0)
        {
            return Refuse($"no logged frame has both a scale and a picture in {folder}.");
        }

        var scale = plates[0].CommonScale is { } common ? $"All portraits at {Times(common)}, to be compared." : "Each portrait has its own scale.";
        var book = new PlateBook(parsed.GetRequiredValue(_title), format.PageWidth, format.PageHeight, scale, date is null ? null : day, pages) { Note = string.Join(" ", notes) };
        var target = parsed.GetRequiredValue(_out);
        var inputs = LogCommand.FilesOf(parsed.GetRequiredValue(_log)).Concat(pictures.Select(picture => picture.Path)).ToList();
        OutputFiles.Write(_host, parsed.GetValue(_force), inputs, [(target, CataloguePlateSheet.Write(book).Content)]);
        _host.Output.WriteLine(target);
        return ExitCode.Done;
    }

    // A picture may turn out to be damaged only when its pixels are read; then the others are laid out without it.
    private (IReadOnlyList<PlatePicture> Pictures, IReadOnlyList<CataloguePlate> Plates, List<IReadOnlyList<PlateFigure>> Pages, IReadOnlyList<string> Notes) LayOut(
        ParseResult parsed, PlateSelection chosen, PlateFormat format)
    {
        List<PlatePicture> pictures = [.. chosen.Pictures];
        List<PlateOmission> leftOut = [.. chosen.LeftOut];
        while (true)
        {
            var plates = CataloguePlates.LayOut(pictures, format, parsed.GetValue(_common));
            var broken = new List<PlatePicture>();
            var pages = plates.Select(plate => (IReadOnlyList<PlateFigure>)[.. plate.Places.Select(place => Figure(place, plate.CommonScale is null, broken))]).ToList();
            if (broken.Count == 0)
            {
                return (pictures, plates, pages, PlateNotes.Of(leftOut, chosen.PlacesKept));
            }

            leftOut.AddRange(broken.Select(picture => new PlateOmission(picture.FileName, PlateOmissionReason.Unreadable)));
            pictures.RemoveAll(broken.Contains);
        }
    }

    private PlateFigure Figure(PlatePlace place, bool ownScale, List<PlatePicture> broken)
    {
        var print = PlateImage.Print(place.Picture.Path, place.Width, place.Picture.HasBar ? null : place.Picture.MetresPerPixel);
        if (!print.IsSound)
        {
            FieldFaults.Print(_host, print.Diagnostics);
            broken.Add(place.Picture);
        }

        return new PlateFigure
        {
            Place = new Bounds(place.Left, place.Top, place.Left + place.Width, place.Top + place.Height),
            Jpeg = print.Value?.Jpeg,
            CaptionLeft = place.PlaceLeft,
            CaptionWidth = place.PlaceWidth,
            Name = place.Picture.Name,
            IsScientific = place.Picture.IsScientific,
            Caption = place.Picture.Caption,
            BarLength = place.BarWidth,
            BarLabel = place.Picture.HasBar || print.Value is { HasBar: true } ? "" : place.Bar.Label,
            ScaleText = ownScale ? Times(place.PrintScale) : "",
        };
    }

    private static string Times(double scale) => string.Create(CultureInfo.InvariantCulture, $"{scale:0.0##} times life size");

    private ExitCode Refuse(string why)
    {
        _host.Error.WriteLine($"studiokit: {why}");
        return ExitCode.BadInput;
    }
}
