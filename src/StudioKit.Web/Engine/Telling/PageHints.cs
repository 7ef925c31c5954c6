using StudioKit.Field;
using StudioKit.Kits;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Hints with the place of the page that has more.</summary>
internal static class PageHints
{
    /// <summary>What would be accepted in place of a fault of a kit; empty where the sentence says it all.</summary>
    public static string Of(Diagnostic found) => found.Help == DiagnosticHelp.StarterKit ? With(found.Hint, "The room Kits has a commented kit to begin with.") : found.Hint ?? "";

    /// <summary>The same of a picture or reading.</summary>
    public static string Of(FieldDiagnostic found) => found.Help switch
    {
        FieldHelp.Plan => With(found.Hint, "The room Light shows what the plan lights, and says why where it does not."),
        FieldHelp.Powers => With(found.Hint, "Each picture has a field for its power."),
        _ => found.Hint,
    };

    private static string With(string? hint, string more) => $"{hint} {more}".TrimStart();
}
