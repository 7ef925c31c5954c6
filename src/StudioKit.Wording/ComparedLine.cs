namespace StudioKit.Wording;

/// <summary>One thing that two plans are compared in.</summary>
/// <param name="Subject">What is compared, e.g. "panel to cut".</param>
/// <param name="First">As the first plan has it, with its unit; "–" where it has none.</param>
/// <param name="Second">As the second plan has it.</param>
public sealed record ComparedLine(string Subject, string First, string Second)
{
    /// <summary>Whether the two differ as printed.</summary>
    public bool Differs => !string.Equals(First, Second, StringComparison.Ordinal);
}
