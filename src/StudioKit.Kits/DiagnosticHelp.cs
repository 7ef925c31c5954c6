namespace StudioKit.Kits;

/// <summary>Where there is more to be had against a fault; each place says in its own words how.</summary>
public enum DiagnosticHelp
{
    /// <summary>The hint says it all.</summary>
    None,

    /// <summary>A commented kit to start from.</summary>
    StarterKit,

    /// <summary>A table of usual light in exposure values.</summary>
    UsualLight,
}
