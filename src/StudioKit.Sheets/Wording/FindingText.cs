using StudioKit.Planning;

namespace StudioKit.Sheets.Wording;

/// <summary>What stands in the way of a check.</summary>
internal static class FindingText
{
    public static string Of(PlanCheck check) =>
        string.Join(' ', check.Findings.Select(finding => finding.Part is { } part ? $"{part}: {finding.Sentence}" : finding.Sentence));
}
