namespace StudioKit.Field;

/// <summary>What is wrong with something that a person handed in, said so that they can put it right.</summary>
/// <param name="Code">Stable code, e.g. <c>FLD003</c>.</param>
/// <param name="Subject">File, reading or field that it is about.</param>
/// <param name="Message">What is wrong, as a sentence.</param>
/// <param name="Hint">What would be accepted; empty where there is nothing to add.</param>
public sealed record FieldDiagnostic(string Code, string Subject, string Message, string Hint = "")
{
    /// <summary>Where there is more to be had against it.</summary>
    public FieldHelp Help { get; init; }

    /// <summary>The diagnostic on one line, the way a compiler prints it.</summary>
    public override string ToString() =>
        Hint.Length == 0 ? $"{Subject}: {Code}: {Message}" : $"{Subject}: {Code}: {Message} {Hint}";
}
