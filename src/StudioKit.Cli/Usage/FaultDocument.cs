using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using StudioKit.Kits;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Usage;

/// <summary>What is wrong, as the JSON document that stands where the asked one cannot be made.</summary>
internal static class FaultDocument
{
    private static readonly JsonSerializerOptions Form = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The document of a command that could not do its work.</summary>
    public static string Write(ExitCode code, IEnumerable<ReportedFault> faults) => JsonReport.Document(json => Fill(
        json.Flag("done", false).Count("exitCode", (int)code), faults));

    /// <summary>What a command printed before it failed, with what is wrong; a document that tells of it already stays as it is.</summary>
    /// <param name="printed">The document; empty where none was made.</param>
    /// <param name="code">The exit code.</param>
    /// <param name="faults">What is wrong.</param>
    public static string Completed(string printed, ExitCode code, IReadOnlyList<ReportedFault> faults)
    {
        if (printed.Trim().Length == 0)
        {
            return Write(code, faults);
        }

        if (Parsed(printed) is not { } document || document.ContainsKey("diagnostics") || document.ContainsKey("kits"))
        {
            return printed.TrimEnd();
        }

        foreach (var (key, value) in JsonNode.Parse(Write(code, faults))!.AsObject())
        {
            document[key] = value?.DeepClone();
        }

        return document.ToJsonString(Form);
    }

    // None where a command was stopped in the middle of its document.
    private static JsonObject? Parsed(string printed)
    {
        try
        {
            return JsonNode.Parse(printed) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The list of faults in a document.</summary>
    public static JsonReport Fill(JsonReport json, IEnumerable<ReportedFault> faults) => json.List("diagnostics", faults, fault => json
        .Text("code", fault.Code)
        .Text("severity", fault.Severity)
        .Text("file", fault.File)
        .Count("line", fault.Line)
        .Count("column", fault.Column)
        .Text("message", fault.Message)
        .Text("hint", fault.Hint));

    /// <summary>A diagnostic of a kit, template or table.</summary>
    public static ReportedFault Of(Diagnostic diagnostic) => new(diagnostic.Code, MemberText.Of(diagnostic.Severity), diagnostic.Message)
    {
        File = diagnostic.File,
        Line = diagnostic.Line,
        Column = diagnostic.Column,
        Hint = CommandHints.On(diagnostic).Hint,
    };
}
