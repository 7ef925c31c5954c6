using System.Globalization;
using System.Text;
using StudioKit.Field.Pictures;
using YamlDotNet.RepresentationModel;

namespace StudioKit.Field.Calibration;

/// <summary>The text of a correction file, and back. The file stands beside the kit; the kit itself is never changed.</summary>
/// <example><code language="yaml">
/// correction-of: Fen and heath kit
/// date: 2026-05-09
/// flashes:
///   - flash: beneath
///     light: {stops: -0.42, plus-minus: 0.08, before: 38, after: 32.9}   # guide number in m
/// panel-transmittance: {stops: 0.11, plus-minus: 0.12, before: 0.5, after: 0.54}
/// camera-clip-point: {stops: 0.6, plus-minus: 0.1, before: 0, after: 0.6}   # stops above ISO 12232 saturation
/// tone-curve:   # stops under clipping by the standard curve, and where the light really lies
///   camera: body R
///   plus-minus: 0.04
///   standard: [0, 0.1, 0.25, 0.5, 1, 2, 4]
///   light: [0, 0.25, 0.58, 1.02, 1.7, 2.8, 4.8]
/// </code></example>
public static class KitCorrectionFile
{
    /// <summary>Most bytes that such a file has [1].</summary>
    public const int MostBytes = BoundedYaml.MostCharacters;

    // A guide number in metres is the largest figure there is.
    private const double MostFigure = 10_000;
    private const int MostLetters = 1000;

    /// <summary>Name of the correction file that belongs to a kit file.</summary>
    /// <param name="kitPath">Path of the kit file.</param>
    public static string PathBeside(string kitPath) => Path.ChangeExtension(kitPath, ".correction.yaml");

    /// <summary>Writes a correction as the text of its file.</summary>
    /// <param name="correction">The correction.</param>
    public static string Write(KitCorrection correction)
    {
        ArgumentNullException.ThrowIfNull(correction);
        var text = new StringBuilder("# Measured corrections. The plan applies them to the kit of this name; delete this file to plan without them.\n");
        text.Append(CultureInfo.InvariantCulture, $"correction-of: {Quoted(correction.Kit)}\ndate: {correction.Date:yyyy-MM-dd}\n");
        text.Append(correction.Flashes.Count > 0 ? "flashes:\n" : "");
        foreach (var flash in correction.Flashes)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - flash: {Quoted(flash.Flash)}\n    light: {Inline(flash.Light)}   # guide number in m\n");
        }

        text.Append(correction.PanelTransmittance is { } panel ? $"panel-transmittance: {Inline(panel)}\n" : "");
        text.Append(correction.CameraClipPoint is { } clip ? $"camera-clip-point: {Inline(clip)}   # stops above ISO 12232 saturation\n" : "");
        text.Append(correction.ToneCurve is { } curve ? ToneCurveText.Of(curve, Quoted(curve.Camera)) : "");
        text.Append(correction.DisagreeingReadings.Count > 0 ? "disagreeing-readings:\n" : "");
        foreach (var reading in correction.DisagreeingReadings)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - {Quoted(reading)}\n");
        }

        return text.ToString();
    }

    /// <summary>Reads a correction file.</summary>
    /// <param name="path">Name to report faults under.</param>
    /// <param name="text">Contents of the file; at most 64 kB.</param>
    /// <returns>The correction, or what is wrong with the file.</returns>
    public static FieldResult<KitCorrection> Read(string path, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            return FromYaml(BoundedYaml.Load(text));
        }
        // The YAML reader meets some damage with exceptions of its own making.
        catch (Exception error) when (error is YamlDotNet.Core.YamlException or FormatException or KeyNotFoundException or InvalidCastException or ArgumentException or InvalidOperationException)
        {
            return new FieldDiagnostic("FLD211", path, "This correction file cannot be used: " + error.Message, "Measure again, or do without the file.");
        }
    }

    private static KitCorrection FromYaml(YamlMappingNode root) => new()
    {
        Kit = Scalar(root, "correction-of"),
        Date = DateOnly.ParseExact(Scalar(root, "date"), "yyyy-MM-dd", CultureInfo.InvariantCulture),
        Flashes = [.. Items(root, "flashes").Select(Flash)],
        PanelTransmittance = Find(root, "panel-transmittance") is { } panel ? Correction("panel-transmittance", panel) : null,
        CameraClipPoint = Find(root, "camera-clip-point") is { } clip ? Correction("camera-clip-point", clip) : null,
        ToneCurve = Find(root, "tone-curve") is { } curve ? Curve(curve) : null,
        DisagreeingReadings = [.. Items(root, "disagreeing-readings").Select(item => item is YamlScalarNode { Value: { } name } ? Name(name) : throw new FormatException("a disagreeing reading has no name."))],
    };

    private static ToneCurve Curve(YamlNode node) => node is YamlMappingNode entry
        ? new ToneCurve([.. Numbers(entry, "standard")], [.. Numbers(entry, "light")]) { Camera = Scalar(entry, "camera"), PlusMinus = Number(entry, "plus-minus", 0.001, KitCorrection.MostStops) }
        : throw new FormatException("'tone-curve' needs camera, plus-minus, standard and light.");

    private static IEnumerable<double> Numbers(YamlMappingNode node, string key) => Items(node, key).Select(item =>
        item is YamlScalarNode { Value: { } text } && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && double.IsFinite(value)
            ? value
            : throw new FormatException($"'{key}' must be a list of numbers."));

    private static FlashCorrection Flash(YamlNode item) => item is YamlMappingNode entry && Find(entry, "light") is { } light
        ? new FlashCorrection(Scalar(entry, "flash"), Correction("light", light))
        : throw new FormatException("an entry of 'flashes' needs 'flash' and 'light'.");

    private static StopsCorrection Correction(string key, YamlNode node) => node is YamlMappingNode entry
        ? new StopsCorrection(
            Number(entry, "stops", -KitCorrection.MostStops, KitCorrection.MostStops), Number(entry, "plus-minus", 0.001, KitCorrection.MostStops),
            Number(entry, "before", -MostFigure, MostFigure), Number(entry, "after", -MostFigure, MostFigure))
        : throw new FormatException($"'{key}' needs stops, plus-minus, before and after.");

    private static double Number(YamlMappingNode node, string key, double least, double most) =>
        double.TryParse(Scalar(node, key), NumberStyles.Float, CultureInfo.InvariantCulture, out var value) && value >= least && value <= most
            ? value
            : throw new FormatException(FormattableString.Invariant($"'{key}' must be a number from {least} to {most}."));

    private static YamlNode? Find(YamlMappingNode node, string key) => node.Children.TryGetValue(new YamlScalarNode(key), out var value) ? value : null;

    private static IEnumerable<YamlNode> Items(YamlMappingNode node, string key) => Find(node, key) switch
    {
        null => [],
        YamlSequenceNode list => list.Children,
        _ => throw new FormatException($"'{key}' must be a list."),
    };

    private static string Scalar(YamlMappingNode node, string key) =>
        Find(node, key) is YamlScalarNode { Value: { } value } ? Name(value) : throw new FormatException($"'{key}' is missing.");

    private static string Name(string text) => text.Length <= MostLetters ? text : throw new FormatException($"a text is longer than {MostLetters} characters.");

    private static string Inline(StopsCorrection c) => string.Create(
        CultureInfo.InvariantCulture, $"{{stops: {c.Stops:0.###}, plus-minus: {c.PlusMinus:0.###}, before: {c.Before:0.####}, after: {c.After:0.####}}}");

    // Double-quoted YAML: backslash, quote and control characters escaped.
    private static string Quoted(string text)
    {
        var quoted = new StringBuilder("\"");
        foreach (var character in text)
        {
            quoted.Append(character switch
            {
                '"' or '\\' => $"\\{character}",
                < ' ' or '\u007f' or '\u0085' or '\u2028' or '\u2029' => string.Create(CultureInfo.InvariantCulture, $"\\u{(int)character:x4}"),
                _ => character.ToString(),
            });
        }

        return quoted.Append('"').ToString();
    }
}
