using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Usage;
using StudioKit.Field;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;
using StudioKit.Kits;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary>Where <c>studiokit scale</c> takes the scale of pictures from, and what it is told of how they were made.</summary>
internal sealed class ScaleSource(CommandHost host)
{
    private readonly Option<string?> _kit = new("--kit") { Description = "Kit that the pictures were taken with, e.g. kits/fen-edge.yaml; left out, the scale comes from another option.", HelpName = "file" };
    private readonly Option<string> _framing = new("--framing")
    {
        Description = "Name of the framing in that kit, as on its card, e.g. \"reed 55 at 1:2\"; left out, the only one.",
        DefaultValueFactory = _ => "",
        HelpName = "name",
    };

    private readonly Option<Length> _sensor = QuantityOption.Optional("--sensor", "Longer side of the sensor, with --magnification, e.g. \"36 mm\"; left out, the scale comes from another option.", QuantityText.TryLength, Length.Zero);
    private readonly Option<Magnification> _magnification = QuantityOption.Optional("--magnification", "Magnification, with --sensor, e.g. 1:2; left out, the scale comes from another option.", QuantityText.TryMagnification, default(Magnification));
    private readonly Option<string?> _rule = new("--rule") { Description = "Picture of a millimetre rule at the same focus, e.g. rule.jpg; left out, the scale comes from another option.", HelpName = "file" };
    private readonly Option<Length> _pixel = QuantityOption.Optional("--pixel-size", "Size of a pixel at the subject, e.g. \"5.6 um\"; left out, the scale comes from another option.", QuantityText.TryLength, Length.Zero);
    private readonly Option<PixelDimensions?> _cameraPixels = QuantityOption.Optional<PixelDimensions?>(
        "--camera-pixels", "Pixels of a whole picture of the camera, e.g. \"8192 x 5464\"; left out, the kit's, or those that the file itself tells of.", TryPixels, null);

    private readonly Option<bool> _cropped = new("--cropped") { Description = "The pictures are parts of what the camera gave, their pixels the camera's own." };
    private readonly Option<PixelDimensions?> _resizedFrom = QuantityOption.Optional<PixelDimensions?>(
        "--resized-from", "Pixels that the pictures had before they were made smaller or larger, e.g. \"8192 x 5464\"; left out, their pixels are the camera's own.", TryPixels, null);

    private ScaleReference? _reference;
    private PictureScale? _given;
    private PictureMaking _making = new();

    public void AddTo(Command command)
    {
        foreach (var option in new Option[] { _kit, _framing, _sensor, _magnification, _rule, _pixel, _cameraPixels, _cropped, _resizedFrom })
        {
            command.Options.Add(option);
        }
    }

    /// <summary>Files that are read besides the pictures to scale.</summary>
    public IEnumerable<string> Inputs(ParseResult parsed) => new[] { parsed.GetValue(_rule), parsed.GetValue(_kit) }.OfType<string>();

    /// <summary>Reads the options.</summary>
    /// <returns>What is wrong with them, already printed; none where all is well.</returns>
    public ExitCode? Read(ParseResult parsed)
    {
        if (Fault(parsed) is { } fault)
        {
            host.Report(UsageCodes.BadUsage, fault);
            return ExitCode.BadInput;
        }

        _making = new PictureMaking { IsCropped = parsed.GetValue(_cropped), ResizedFrom = parsed.GetValue(_resizedFrom) };
        if (parsed.GetValue(_pixel) > Length.Zero)
        {
            _given = new PictureScale(parsed.GetValue(_pixel).Meters, new ScaleBasis.Given());
            return null;
        }

        if (parsed.GetValue(_rule) is { } rule)
        {
            return Keep(FramePicture.With(rule, picture => Measure(picture, rule)));
        }

        if (parsed.GetValue(_kit) is { } kit)
        {
            return FromKit(parsed, kit);
        }

        _reference = ScaleReference.OfFraming(parsed.GetValue(_sensor).Meters, parsed.GetValue(_magnification).Value, parsed.GetValue(_cameraPixels));
        return null;
    }

    // Which of two would be taken is a riddle, and the scale is wrong if it is guessed wrongly.
    private string? Fault(ParseResult parsed)
    {
        var given = new Option[] { _pixel, _rule, _kit, _sensor }.Where(option => parsed.GetResult(option) is { Implicit: false }).Select(option => option.Name).ToList();
        return given switch
        {
            [] => "give --kit and --framing, or --sensor and --magnification, or --rule, or --pixel-size.",
            [var first, var second, ..] => $"{first} and {second} each say what the scale is: give one of them.",
            ["--pixel-size"] when parsed.GetValue(_pixel) <= Length.Zero => "--pixel-size must be more than nothing, e.g. \"5.6 um\".",
            ["--sensor"] when parsed.GetValue(_sensor) <= Length.Zero => "--sensor must be more than nothing, e.g. \"36 mm\".",
            ["--sensor"] when parsed.GetValue(_magnification).Value <= 0 => "--sensor goes with --magnification, e.g. --magnification 1:2.",
            _ => null,
        };
    }

    /// <summary>Scale of a picture, and the name that its copy gets.</summary>
    public FieldResult<ChosenScale> Of(string photo) => FramePicture.With(photo, picture => Of(photo, picture));

    private FieldResult<ChosenScale> Of(string photo, FramePicture picture)
    {
        // A raw file mostly has a JPEG of its own name beside it.
        var name = Path.GetFileName(photo) + (picture.Settings.IsPreview ? ".jpg" : "");
        if (_given is { } given)
        {
            return new ChosenScale(given, name);
        }

        var scale = PictureScaling.Of(picture, _reference!, _making);
        if (scale.Value is not { } found)
        {
            return scale.Diagnostics[0];
        }

        foreach (var caveat in found.Caveats)
        {
            host.Error.WriteLine($"{photo}: {caveat}");
        }

        return new ChosenScale(found, name);
    }

    private FieldResult<ScaleReference> Measure(FramePicture picture, string rule)
    {
        var size = new PixelDimensions(picture.Width, picture.Height);
        var measured = PhotographedRule.Measure(picture);
        if (measured.Value is not { } found)
        {
            return measured.Diagnostics[0];
        }

        foreach (var caveat in found.Caveats)
        {
            host.Error.WriteLine($"{rule}: {caveat}");
        }

        return ScaleReference.OfRule(found, Path.GetFileName(rule), size);
    }

    private ExitCode? FromKit(ParseResult parsed, string kit)
    {
        var read = KitInput.Read(kit, host);
        return read.HasErrors ? ExitCode.BadInput : Keep(ScaleReference.OfPlan(Planner.Plan(read), parsed.GetRequiredValue(_framing), parsed.GetValue(_cameraPixels)));
    }

    private ExitCode? Keep(FieldResult<ScaleReference> found)
    {
        _reference = found.Value;
        return found.IsSound ? null : FieldFaults.Print(host, found.Diagnostics);
    }

    private static bool TryPixels(string text, out PixelDimensions? value, out string problem)
    {
        var isRead = QuantityText.TryPixels(text, out var wide, out var high, out problem) && wide > 0 && high > 0;
        value = isRead ? new PixelDimensions(wide, high) : null;
        problem = isRead || problem.Length > 0 ? problem : $"'{text}' has no pixels: write for example '8192 x 5464'";
        return isRead;
    }
}
