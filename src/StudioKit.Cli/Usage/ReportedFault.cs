namespace StudioKit.Cli.Usage;

/// <summary>One thing that a command found wrong, as it is told to a program that reads JSON.</summary>
/// <param name="Code">Stable code, e.g. <c>KIT001</c>; <see cref="UsageCodes"/> holds those of the command line.</param>
/// <param name="Severity"><c>error</c> or <c>warning</c>.</param>
/// <param name="Message">What is wrong, as a sentence.</param>
internal sealed record ReportedFault(string Code, string Severity, string Message)
{
    /// <summary>File, or the reading or option that it is about; none where the message says it all.</summary>
    public string? File { get; init; }

    /// <summary>Line, counted from 1; none where it is about no line.</summary>
    public int? Line { get; init; }

    /// <summary>Column, counted from 1; none where it is about no line.</summary>
    public int? Column { get; init; }

    /// <summary>What would be accepted; none where the message says it.</summary>
    public string? Hint { get; init; }
}
