using StudioKit.Kits;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Usage;

/// <summary>What is wrong, as the JSON document that stands where the asked one cannot be made.</summary>
internal static class FaultDocument
{
    /// <summary>The document of a command that could not do its work.</summary>
    public static string Write(ExitCode code, IEnumerable<ReportedFault> faults) => JsonReport.Document(json => Fill(
        json.Flag("done", false).Count("exitCode", (int)code), faults));

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
        Hint = diagnostic.Hint,
    };
}
