using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Checks;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells a plan in the records that the page shows.</summary>
internal static class PlanTelling
{
    /// <summary>What is said of a text that cannot be read.</summary>
    public static PlanAnswer Unread(KitReadResult read) => new("", "", Verdict(read), Faults(read)) { MissingParts = read.MissingParts };

    /// <summary>The plan of a kit.</summary>
    public static PlanAnswer Of(KitReadResult read, Plan plan) => new(plan.ContentHash, plan.Kit.Name, Verdict(plan), Faults(read))
    {
        Corrections = CorrectionWords(plan),
        Measures = MeasureTelling.Of(plan),
        Checks = [.. plan.Checks.Select(check => CheckTelling.Of(check, plan))],
        Studios = StudioTelling.Of(plan),
        Cards = [.. plan.Exposures.Select(CardTelling.Of)],
        Animals = AnimalTelling.Of(plan),
    };

    private static string CorrectionWords(Plan plan) => plan.Corrections is { } corrections
        ? FormattableString.Invariant($"with the corrections of {corrections.Date:yyyy-MM-dd}: {string.Join(", ", corrections.Values.Select(value => value.Quantity))}")
        : "";

    /// <summary>The verdict on a kit, planned or not.</summary>
    public static VerdictLine Verdict(KitReadResult read, Plan? plan) => plan is null ? Verdict(read) : Verdict(plan);

    private static VerdictLine Verdict(KitReadResult read)
    {
        var errors = read.Diagnostics.Where(found => found.Severity == DiagnosticSeverity.Error).ToList();
        var text = errors.Count == 1 ? "One thing in the kit's text cannot be read." : FormattableString.Invariant($"{errors.Count} things in the kit's text cannot be read.");
        return new VerdictLine(Standing.Unread, text, errors.Count > 0 ? errors[0].Message : "", "");
    }

    private static VerdictLine Verdict(Plan plan)
    {
        var verdict = StudioVerdict.Of(plan);
        var first = verdict.InTheWay.Count > 0 ? verdict.InTheWay[0] : null;
        var about = first ?? plan.Checks.FirstOrDefault(check => check is { Kind: PlanCheckKind.Exposure, Findings.Count: > 0 });
        var standing = first is not null ? Standing.Fails : verdict.AtTheEdge > 0 ? Standing.AtTheEdge : Standing.Stands;
        return new VerdictLine(
            standing, StudioVerdictText.Of(verdict),
            first is null ? "" : $"{CheckText.Name(first)}: {CheckText.Shortfall(first)}.",
            first is null ? "" : CheckText.Remedy(first))
        {
            Check = about is null ? "" : CheckTelling.Id(about),
            Places = about is null ? [] : CheckTelling.Places(about, plan),
        };
    }

    private static IReadOnlyList<Fault> Faults(KitReadResult read) => [.. read.Diagnostics.Select(FaultTelling.Of)];
}
