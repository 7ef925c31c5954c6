using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Reports;

namespace StudioKit.Cli.Commands;

/// <summary>Cut plans as JSON documents, by code that is made at the build: a native command cannot look types up while it runs.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(BarCutReport))]
[JsonSerializable(typeof(SheetCutReport))]
internal sealed partial class CutJson : JsonSerializerContext
{
    // Relaxed escaping keeps labels in other scripts readable; the document is not for embedding in a web page.
    private static readonly CutJson Form = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Converters = { new JsonStringEnumConverter<UncutReason>(JsonNamingPolicy.KebabCaseLower) },
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        WriteIndented = true,
    });

    /// <summary>A plan of bars.</summary>
    public static string Document(BarCutReport report) => JsonSerializer.Serialize(report, Form.BarCutReport) + "\n";

    /// <summary>A plan of sheets.</summary>
    public static string Document(SheetCutReport report) => JsonSerializer.Serialize(report, Form.SheetCutReport) + "\n";
}
