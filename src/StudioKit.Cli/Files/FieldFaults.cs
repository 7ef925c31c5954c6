using StudioKit.Cli.Usage;
using StudioKit.Field;

namespace StudioKit.Cli.Files;

/// <summary>Prints what is wrong with pictures, readings and logs, and tells which exit code that is.</summary>
internal static class FieldFaults
{
    // Files that cannot be opened, decoded or written, by the codes of FieldDiagnostic.
    private static readonly string[] FileTrouble =
    [
        "FLD001", "FLD002", "FLD003", "FLD004", "FLD005", "FLD006", "FLD007",
        "FLD314", "FLD315",
        "FLD451", "FLD452", "FLD453", "FLD455", "FLD458", "FLD459", "FLD460", "FLD461", "FLD462",
    ];

    public static ExitCode Print(CommandHost host, IEnumerable<FieldDiagnostic> diagnostics)
    {
        var code = ExitCode.Done;
        foreach (var diagnostic in diagnostics.Select(CommandHints.On))
        {
            host.Error.WriteLine(diagnostic.ToString());
            host.Faults.Add(new ReportedFault(diagnostic.Code, "error", diagnostic.Message)
            {
                File = diagnostic.Subject,
                Hint = diagnostic.Hint.Length == 0 ? null : diagnostic.Hint,
            });
            code = FileTrouble.Contains(diagnostic.Code, StringComparer.Ordinal) ? ExitCode.FileTrouble : ExitCode.BadInput;
        }

        return code;
    }
}
