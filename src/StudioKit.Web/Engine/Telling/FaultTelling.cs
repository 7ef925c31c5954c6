using StudioKit.Kits;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>A diagnostic as the page shows it.</summary>
internal static class FaultTelling
{
    public static Fault Of(Diagnostic found) =>
        new(found.Line, found.Column, found.Severity == DiagnosticSeverity.Error, found.Code, found.Message, PageHints.Of(found));
}
