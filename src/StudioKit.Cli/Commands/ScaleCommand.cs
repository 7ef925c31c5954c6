using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Scale;
using StudioKit.Kits;
using StudioKit.Physics.Optics;
using StudioKit.Sheets.Json;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit scale</c>: copies of pictures with a scale bar.</summary>
internal sealed class ScaleCommand
{
    private const string Text =
        """
        Makes copies of pictures with a scale bar in a corner, metadata and colour profile kept, and an XMP sidecar beside each.
        Originals are never changed.

        The scale comes from the framing (--sensor and --magnification), from a picture of the card's millimetre rule taken at the
        same focus (--rule), or is given (--pixel-size).

        Example: studiokit scale spider-*.jpg --sensor "36 mm" --magnification 1:2 --out scaled
        Example: studiokit scale spider-*.jpg --rule rule.jpg --out scaled
        """;

    private readonly CommandHost _host;
    private readonly Argument<string[]> _photos = new("photos") { Description = "Picture files: JPEG, PNG or TIFF.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<Length> _sensor = QuantityOption.Optional("--sensor", "Longer side of the sensor.", QuantityText.TryLength, Length.Zero);
    private readonly Option<Magnification> _magnification = QuantityOption.Optional("--magnification", "Magnification of the framing.", QuantityText.TryMagnification, default(Magnification));
    private readonly Option<string?> _rule = new("--rule") { Description = "Picture of a millimetre rule at the same focus." };
    private readonly Option<Length> _pixel = QuantityOption.Optional("--pixel-size", "Size of a pixel at the subject, e.g. \"5.6 um\".", QuantityText.TryLength, Length.Zero);
    private readonly Option<ScaleBarCorner> _corner = new("--corner") { Description = "Corner for the bar, e.g. BottomRight." };
    private readonly Option<string> _out = new("--out") { Description = "Folder for the copies.", Required = true };
    private readonly Option<bool> _force = ForceOption.Create();
    private readonly Option<bool> _json = JsonOption.Create();

    private ScaleCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var scale = new ScaleCommand(host);
        var command = new Command("scale", Text)
        {
            scale._photos, scale._sensor, scale._magnification, scale._rule, scale._pixel, scale._corner, scale._out, scale._force, scale._json,
        };
        command.SetAction(async (parsed, cancel) => (int)await scale.RunAsync(parsed, cancel));
        return command;
    }

    private async Task<ExitCode> RunAsync(ParseResult parsed, CancellationToken cancel)
    {
        var folder = parsed.GetRequiredValue(_out);
        if (FixedScale(parsed, out var scale) is { } fault)
        {
            return fault;
        }

        Directory.CreateDirectory(folder);
        var jobs = new List<ScaleJob>();
        var code = ExitCode.Done;
        foreach (var photo in parsed.GetRequiredValue(_photos))
        {
            var size = scale ?? FromFraming(parsed, photo, ref code);
            if (size is not null)
            {
                jobs.Add(new ScaleJob(photo, Path.Combine(folder, Path.GetFileName(photo)), size, parsed.GetValue(_corner), parsed.GetValue(_force)));
            }
        }

        var results = await ScaleBatch.RunAsync(jobs, _host.ErrorIsTerminal ? new ScaleProgressLine(_host) : null, cancel);
        Print(parsed, [.. results.Where(result => result.IsSound).Select(result => result.Value!)]);
        var faults = FieldFaults.Print(_host, results.SelectMany(result => result.Diagnostics));
        return faults == ExitCode.Done ? code : faults;
    }

    // A scale that holds for all pictures alike; none where it follows from each picture's pixels.
    private ExitCode? FixedScale(ParseResult parsed, out PictureScale? scale)
    {
        scale = null;
        if (parsed.GetValue(_pixel) > Length.Zero)
        {
            scale = new PictureScale(parsed.GetValue(_pixel).Meters, new ScaleBasis.Given());
            return null;
        }

        if (parsed.GetValue(_rule) is { } rule)
        {
            var measured = FramePicture.With(rule, PhotographedRule.Measure);
            foreach (var caveat in measured.Value?.Caveats ?? [])
            {
                _host.Error.WriteLine($"{rule}: {caveat}");
            }

            scale = measured.Value is { } found
                ? new PictureScale(found.MicrometresPerPixel * 1e-6, new ScaleBasis.Rule(Path.GetFileName(rule), default)) { RelativeUncertainty = found.RelativeUncertainty }
                : null;
            return measured.IsSound ? null : FieldFaults.Print(_host, measured.Diagnostics);
        }

        if (parsed.GetValue(_sensor) <= Length.Zero || parsed.GetValue(_magnification).Value <= 0)
        {
            _host.Error.WriteLine("studiokit: give --sensor and --magnification, or --rule, or --pixel-size.");
            return ExitCode.BadInput;
        }

        return null;
    }

    private PictureScale? FromFraming(ParseResult parsed, string photo, ref ExitCode code)
    {
        var opened = FramePicture.Open(photo);
        code = opened.IsSound ? code : FieldFaults.Print(_host, opened.Diagnostics);
        using var picture = opened.Value;
        return picture is null
            ? null
            : new PictureScale(
                PixelScale.AtSubject(
                    PixelScale.PixelPitch(parsed.GetValue(_sensor).Meters, Math.Max(picture.Width, picture.Height)), parsed.GetValue(_magnification).Value),
                new ScaleBasis.Framed { SensorWidth = parsed.GetValue(_sensor).Meters, Magnification = parsed.GetValue(_magnification).Value });
    }

    private void Print(ParseResult parsed, List<ScaledPicture> pictures)
    {
        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(JsonReport.Document(json => json.List("pictures", pictures, picture => json
                .Text("file", picture.Path).Text("sidecar", picture.Sidecar).Text("bar", picture.Bar.Label)
                .Number("pixelSizeUm", picture.Bar.Length / picture.Bar.Pixels * 1e6).Number("barPixels", picture.Bar.Pixels))));
            return;
        }

        foreach (var picture in pictures)
        {
            _host.Output.WriteLine(FormattableString.Invariant($"{picture.Path}: bar {picture.Bar.Label}, {picture.Bar.Length / picture.Bar.Pixels * 1e6:0.###} µm per pixel"));
        }
    }
}
