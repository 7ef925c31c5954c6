using System.Globalization;
using System.Text;
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
/// </code></example>
public static class KitCorrectionFile
{
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
        text.Append(correction.DisagreeingReadings.Count > 0 ? "disagreeing-readings:\n" : "");
        foreach (var reading in correction.DisagreeingReadings)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - {Quoted(reading)}\n");
        }

        return text.ToString();
    }

    /// <summary>Reads a correction file.</summary>
    /// <param name="path">Name to report faults under.</param>
    /// <param name="text">Contents of the file.</param>
    public static FieldResult<KitCorrection> Read(string path, string text)
    {
        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(text));
            return stream.Documents.Count == 1 && stream.Documents[0].RootNode is YamlMappingNode root
                ? FromYaml(root)
                : new FieldDiagnostic("FLD211", path, "This is not a correction file.", "Run the calibration again.");
        }
        catch (Exception error) when (error is YamlDotNet.Core.YamlException or FormatException or KeyNotFoundException or InvalidCastException)
        {
            return new FieldDiagnostic("FLD211", path, "The correction file cannot be read: " + error.Message, "Run the calibration again.");
        }
    }

    private static KitCorrection FromYaml(YamlMappingNode root) => new()
    {
        Kit = Scalar(root, "correction-of"),
        Date = DateOnly.ParseExact(Scalar(root, "date"), "yyyy-MM-dd", CultureInfo.InvariantCulture),
        Flashes = [.. Items(root, "flashes").Cast<YamlMappingNode>().Select(item =>
            new FlashCorrection(Scalar(item, "flash"), Correction((YamlMappingNode)item["light"])))],
        PanelTransmittance = Find(root, "panel-transmittance") is YamlMappingNode panel ? Correction(panel) : null,
        CameraClipPoint = Find(root, "camera-clip-point") is YamlMappingNode clip ? Correction(clip) : null,
        DisagreeingReadings = [.. Items(root, "disagreeing-readings").Select(item => ((YamlScalarNode)item).Value ?? "")],
    };

    private static StopsCorrection Correction(YamlMappingNode node)
    {
        var stops = Number(node, "stops");
        return Math.Abs(stops) <= 10
            ? new StopsCorrection(stops, Number(node, "plus-minus"), Number(node, "before"), Number(node, "after"))
            : throw new FormatException("a correction of more than 10 stops cannot be right.");
    }

    private static double Number(YamlMappingNode node, string key)
    {
        var value = double.Parse(Scalar(node, key), NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value) ? value : throw new FormatException($"'{key}' is not a number.");
    }

    private static YamlNode? Find(YamlMappingNode node, string key) => node.Children.TryGetValue(new YamlScalarNode(key), out var value) ? value : null;

    private static IEnumerable<YamlNode> Items(YamlMappingNode node, string key) => Find(node, key) is YamlSequenceNode list ? list.Children : [];

    private static string Scalar(YamlMappingNode node, string key) =>
        Find(node, key) is YamlScalarNode { Value: { } value } ? value : throw new FormatException($"'{key}' is missing.");

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
