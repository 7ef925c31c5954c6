using StudioKit.Field;
using StudioKit.Kits;

namespace StudioKit.Cli.Usage;

/// <summary>Hints with the command that has more.</summary>
internal static class CommandHints
{
    /// <summary>A diagnostic of a kit whose hint names the command.</summary>
    public static Diagnostic On(Diagnostic diagnostic) => diagnostic.Help switch
    {
        DiagnosticHelp.StarterKit => diagnostic with { Hint = With(diagnostic.Hint, "'studiokit new' writes a commented file to start from.") },
        DiagnosticHelp.UsualLight => diagnostic with { Hint = With(diagnostic.Hint, "'studiokit words light' has a table.") },
        _ => diagnostic,
    };

    /// <summary>A diagnostic of a picture or reading whose hint names the command or option.</summary>
    public static FieldDiagnostic On(FieldDiagnostic diagnostic) => diagnostic.Help switch
    {
        FieldHelp.Plan => diagnostic with { Hint = With(diagnostic.Hint, "Run plan to see why.") },
        FieldHelp.Powers => diagnostic with { Hint = With(diagnostic.Hint, "Powers are named with --ladder, e.g. --ladder 1/32 --ladder 1/16 --ladder 1/8.") },
        _ => diagnostic,
    };

    private static string With(string? hint, string more) => $"{hint} {more}".TrimStart();
}
