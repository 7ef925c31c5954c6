using StudioKit.Physics;

namespace StudioKit.Kits.Text;

/// <summary>Collects what is wrong, up to a limit that no honest file reaches.</summary>
internal sealed class DiagnosticList(string kitFile)
{
    private readonly List<Diagnostic> _all = [];
    private readonly List<string> _files = [kitFile];

    public bool IsFull => _all.Count >= KitLimits.Faults;

    public int Errors { get; private set; }

    public void Error(string code, PlacedText at, string message, string? hint, DiagnosticHelp help = DiagnosticHelp.None) => Error(code, at.Source, at.Line, at.Column, message, hint, help);

    public void Error(string code, SourceText source, int line, int column, string message, string? hint, DiagnosticHelp help = DiagnosticHelp.None) =>
        Add(DiagnosticSeverity.Error, code, source, line, column, message, hint, help);

    public void Warn(string code, PlacedText at, string message, string? hint) =>
        Add(DiagnosticSeverity.Warning, code, at.Source, at.Line, at.Column, message, hint);

    /// <summary>All of them, the kit's first, then part by part, and by place within a file.</summary>
    public ValueList<Diagnostic> InOrder() =>
        [.. _all.OrderBy(fault => _files.IndexOf(fault.File)).ThenBy(fault => fault.Line).ThenBy(fault => fault.Column)];

    private void Add(DiagnosticSeverity severity, string code, SourceText source, int line, int column, string message, string? hint, DiagnosticHelp help = DiagnosticHelp.None)
    {
        Errors += severity == DiagnosticSeverity.Error ? 1 : 0;
        if (IsFull)
        {
            return;
        }

        if (!_files.Contains(source.File, StringComparer.Ordinal))
        {
            _files.Add(source.File);
        }

        // A part that serves twice would report its faults twice.
        var fault = new Diagnostic(code, severity, source.File, line, column, message, hint, source.Line(line)) { Help = help };
        if (_all.Contains(fault))
        {
            return;
        }

        _all.Add(_all.Count == KitLimits.Faults - 1
            ? new Diagnostic(DiagnosticCodes.TooManyFaults, DiagnosticSeverity.Error, source.File, line, column, "There are more faults from here on.", "Put these right first.", "")
            : fault);
    }
}
