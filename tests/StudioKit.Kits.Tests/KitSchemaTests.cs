using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using YamlDotNet.RepresentationModel;

namespace StudioKit.Kits.Tests;

/// <summary>The schema against an independent validator of JSON Schema 2020-12.</summary>
public sealed class KitSchemaTests
{
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(KitSchema.Write()));

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("pond-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void An_editor_accepts_the_demo_kits(string file) =>
        Faults(File.ReadAllText(Path.Combine(KitFolder.Path, file))).Should().BeEmpty();

    [Fact]
    public void An_editor_accepts_the_starter_kit() => Faults(StarterKit.Text).Should().BeEmpty();

    [Theory]
    [InlineData("missing-unit")]
    [InlineData("wrong-unit")]
    [InlineData("unknown-unit")]
    [InlineData("decimal-comma")]
    [InlineData("unknown-key")]
    [InlineData("unknown-section")]
    [InlineData("unknown-choice")]
    [InlineData("wrong-type-list")]
    [InlineData("wrong-type-scalar")]
    [InlineData("missing-required")]
    [InlineData("bare-aperture")]
    [InlineData("bare-guide-number")]
    [InlineData("neither-yes-nor-no")]
    [InlineData("sensor-one-side")]
    public void An_editor_marks_what_the_reader_refuses(string name) =>
        Faults(File.ReadAllText(Path.Combine(KitFolder.Path, "..", "tests", "StudioKit.Kits.Tests", "Broken", name + ".yaml"))).Should().NotBeEmpty();

    [Fact]
    public void Every_key_has_a_description_and_no_section_takes_unknown_ones()
    {
        using var schema = JsonDocument.Parse(KitSchema.Write());

        var sections = schema.RootElement.GetProperty("$defs").EnumerateObject().Where(definition => !definition.Name.StartsWith("value-", StringComparison.Ordinal))
            .Select(section => section.Value).Append(schema.RootElement).ToList();

        sections.Should().HaveCountGreaterThan(20);
        sections.Should().OnlyContain(section => !section.GetProperty("additionalProperties").GetBoolean());
        sections.SelectMany(section => section.GetProperty("properties").EnumerateObject())
            .Should().OnlyContain(key => key.Value.GetProperty("description").GetString()!.Length > 3);
    }

    // YAML makes a number of what looks like one, and an editor then asks whether a number may stand there.
    [Fact]
    public void Wherever_the_reader_takes_a_bare_number_an_editor_does()
    {
        var kinds = typeof(Quantities.Kinds).GetFields().Select(field => field.GetValue(null)).OfType<Quantities.ValueKind<double>>().ToList();

        kinds.Should().HaveCountGreaterThan(20);
        kinds.Where(kind => new[] { "1", "0.20", "5", "1e3" }.Any(text => kind.Read(text).IsGood)).Should().NotBeEmpty().And.OnlyContain(kind => kind.JsonType == "number" || kind.JsonType == "integer");
    }

    internal static List<string> Faults(string yaml)
    {
        var stream = new YamlStream();
        try
        {
            stream.Load(new StringReader(yaml));
        }
        catch (Exception fault) when (fault is YamlDotNet.Core.YamlException or ArgumentException or InvalidOperationException)
        {
            return [$"no YAML: {fault.Message}"];
        }

        using var json = JsonDocument.Parse(ToJson(stream.Documents[0].RootNode)!.ToJsonString());
        var results = Schema.Value.Evaluate(json.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return results.IsValid ? [] : [.. results.Details!.Where(detail => detail.Errors is not null)
            .SelectMany(detail => detail.Errors!.Select(error => $"{detail.InstanceLocation}: {error.Value}"))];
    }

    // As an editor's YAML reader sees plain scalars by the YAML 1.2 core schema.
    private static JsonNode? ToJson(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value!, ToJson(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(ToJson)]),
        YamlScalarNode { Style: YamlDotNet.Core.ScalarStyle.Plain } scalar => Plain(scalar.Value!),
        _ => JsonValue.Create(((YamlScalarNode)node).Value),
    };

    private static JsonValue? Plain(string text) => text switch
    {
        "" or "~" or "null" => null,
        "true" => JsonValue.Create(true),
        "false" => JsonValue.Create(false),
        _ when double.TryParse(text, System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) =>
            JsonValue.Create(number),
        _ => JsonValue.Create(text),
    };
}
