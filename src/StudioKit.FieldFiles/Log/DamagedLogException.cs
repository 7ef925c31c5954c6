using StudioKit.Field;

namespace StudioKit.FieldFiles.Log;

/// <summary>A log holds something that no StudioKit wrote, or cannot be read at all.</summary>
/// <param name="diagnostic">What is wrong, and what can be done about it.</param>
/// <param name="inner">What was met while reading.</param>
public sealed class DamagedLogException(FieldDiagnostic diagnostic, Exception? inner = null) : Exception(diagnostic.ToString(), inner)
{
    /// <summary>What is wrong, and what can be done about it.</summary>
    public FieldDiagnostic Diagnostic { get; } = diagnostic;
}
