using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Usage;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Scale;
using StudioKit.Sheets.Json;
using StudioKit.Writing;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit scale</c>: copies of pictures with a scale bar.</summary>
internal sealed class ScaleCommand
{
    private const string Text =
        """
        Makes copies of pictures with a scale bar and its length in a corner, everything else in them as it is, and an XMP sidecar beside each that says
        what the scale was worked out from. Only what lies under the bar changes: JPEGs are not compressed again, PNGs and TIFFs keep their bits.
        Of a raw file the preview is taken, and the copy is a JPEG.
        Originals are never changed: no picture or sidecar is replaced that StudioKit did not write itself. Where the copy's usual sidecar NAME.xmp is
        somebody else's, the scale goes into NAME.scale.xmp. Two pictures of one name cannot go into one folder.

        Coordinates, serial numbers and names that a picture carries stay in its copy, which is warned of; --clean takes them out, and --log does so for
        the pictures of sensitive sessions. The copy's file name is the picture's own; 'studiokit log export --copies' gives neutral ones.

        The scale comes from a framing of a kit (--kit and --framing), from sensor and magnification (--sensor and --magnification), from a picture of
        the card's millimetre rule taken at the same focus (--rule), or is given (--pixel-size).

        A picture with other pixels than the camera gives was cropped or resized, and is refused until it is said how: --cropped, --resized-from, or both.

        Example: studiokit scale spider-*.jpg --kit kits/fen-edge.yaml --framing "reed 55 at 1:2" --out scaled
        Example: studiokit scale web.jpg --kit kits/fen-edge.yaml --framing "reed 55 at 1:2" --resized-from "8192 x 5464" --out scaled
        Example: studiokit scale spider-*.jpg --sensor "36 mm" --magnification 1:2 --out scaled
        Example: studiokit scale spider-*.jpg --rule rule.jpg --out scaled
        """;

    private readonly CommandHost _host;
    private readonly Argument<string[]> _photos = new("photos") { Description = "Picture files: JPEG, PNG, TIFF or raw with a preview, e.g. spider-*.jpg.", Arity = ArgumentArity.OneOrMore };
    private readonly ScaleSource _source;
    private readonly Option<ScaleBarCorner> _corner = ChoiceOption.Create("--corner", "Corner for the bar, e.g. top-left.", ScaleBarCorner.BottomRight);
    private readonly Option<string> _out = new("--out") { Description = "Folder for the copies, e.g. scaled.", HelpName = "folder", Required = true };
    private readonly CleanOptions _clean = new();
    private readonly Option<bool> _json = JsonOption.Create();

    private ScaleCommand(CommandHost host) => (_host, _source) = (host, new ScaleSource(host));

    public static Command Create(CommandHost host)
    {
        var scale = new ScaleCommand(host);
        var command = new Command("scale", Text)
        {
            scale._photos, scale._corner, scale._out, scale._json,
        };
        scale._source.AddTo(command);
        scale._clean.AddTo(command);
        command.SetAction(async (parsed, cancel) => (int)await scale.RunAsync(parsed, cancel));
        return command;
    }

    private async Task<ExitCode> RunAsync(ParseResult parsed, CancellationToken cancel)
    {
        var folder = parsed.GetRequiredValue(_out);
        if (_source.Read(parsed) is { } fault)
        {
            return fault;
        }

        if (folder.Length == 0)
        {
            throw new FileTroubleException("--out names no folder; give one, e.g. --out scaled.");
        }

        var isCleaned = _clean.Which(parsed, _host, out var unread);
        if (unread != ExitCode.Done)
        {
            return unread;
        }

        var jobs = new List<ScaleJob>();
        var code = ExitCode.Done;
        foreach (var photo in parsed.GetRequiredValue(_photos).DistinctBy(Path.GetFullPath))
        {
            var chosen = _source.Of(photo);
            if (chosen.Value is { } scale)
            {
                jobs.Add(new ScaleJob(photo, Path.Combine(folder, scale.TargetName), scale.Scale, parsed.GetValue(_corner)) { IsClean = isCleaned(photo) });
            }
            else
            {
                code = FieldFaults.Print(_host, chosen.Diagnostics);
            }
        }

        using var files = FileBatch.Open(ScaleBatch.Files(jobs, _source.Inputs(parsed)), cancel);
        var results = await ScaleBatch.RunAsync(jobs, files, _host.ErrorIsTerminal ? new ScaleProgressLine(_host) : null, cancel);
        OutputFiles.Committed(_host, files);
        Print(parsed, [.. results.Zip(jobs).Where(entry => entry.First.IsSound).Select(entry => (entry.First.Value!, entry.Second.Scale))]);
        jobs.ForEach(job => _clean.WarnOfCopy(_host, job.Source, job.IsClean));
        var faults = FieldFaults.Print(_host, results.SelectMany(result => result.Diagnostics));
        return faults == ExitCode.Done ? code : faults;
    }

    private void Print(ParseResult parsed, List<(ScaledPicture Picture, PictureScale Scale)> made)
    {
        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(JsonReport.Document(json => json.List("pictures", made, entry => json
                .Text("file", entry.Picture.Path).Text("sidecar", entry.Picture.Sidecar).Text("bar", entry.Picture.Bar.Label)
                .Number("pixelSizeUm", entry.Scale.MetresPerPixel * 1e6).Number("relativeUncertainty", entry.Scale.RelativeUncertainty)
                .Number("barPixels", entry.Picture.Bar.Pixels).Text("origin", ScaleBasisText.Of(entry.Scale))
                .Text("changes", string.Join(" ", entry.Picture.Changes)))));
            return;
        }

        foreach (var (picture, scale) in made)
        {
            var doubt = scale.RelativeUncertainty is { } relative ? FormattableString.Invariant($" ± {100 * relative:0.##} %") : "";
            _host.Output.WriteLine(FormattableString.Invariant($"{picture.Path}: bar {picture.Bar.Label}, {scale.MetresPerPixel * 1e6:0.###} µm per pixel{doubt}"));
            foreach (var change in picture.Changes)
            {
                _host.Error.WriteLine($"{picture.Path}: {change}");
            }
        }
    }
}
