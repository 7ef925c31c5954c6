namespace StudioKit.Kits;

/// <summary>How much a diagnostic matters.</summary>
public enum DiagnosticSeverity
{
    /// <summary>The kit can be used, but something in it is odd.</summary>
    Warning,

    /// <summary>The kit cannot be used until this is put right.</summary>
    Error,
}
