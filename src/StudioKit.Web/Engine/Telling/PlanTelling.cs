using StudioKit.Kits;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Sheets.Wording;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells a plan in the records that the page shows.</summary>
internal static class PlanTelling
{
    /// <summary>What is said of a text that cannot be read.</summary>
    public static PlanAnswer Unread(KitReadResult read)
    {
        var faults = Faults(read);
        var errors = faults.Count(fault => fault.IsError);
        var text = errors == 1 ? "One thing in the kit's text cannot be read." : FormattableString.Invariant($"{errors} things in the kit's text cannot be read.");
        return new PlanAnswer("", "", new VerdictLine(Standing.Unread, text, faults.FirstOrDefault(fault => fault.IsError)?.Message ?? "", ""), faults);
    }

    /// <summary>The plan of a kit.</summary>
    public static PlanAnswer Of(KitReadResult read, Plan plan) => new(plan.ContentHash, plan.Kit.Name, Verdict(plan), Faults(read))
    {
        Corrections = CorrectionWords(plan),
        Measures = MeasureTelling.Of(plan),
        Checks = [.. plan.Checks.Select(check => Check(check, plan))],
        Studios = StudioTelling.Of(plan),
        Cards = [.. plan.Exposures.Select(CardTelling.Of)],
        Animals = AnimalTelling.Of(plan),
    };

    private static string CorrectionWords(Plan plan) => plan.Corrections is { } corrections
        ? FormattableString.Invariant($"with the corrections of {corrections.Date:yyyy-MM-dd}: {string.Join(", ", corrections.Values.Select(value => value.Quantity))}")
        : "";

    private static VerdictLine Verdict(Plan plan)
    {
        var verdict = StudioVerdict.Of(plan);
        var first = verdict.InTheWay.Count > 0 ? verdict.InTheWay[0] : null;
        var standing = first is not null ? Standing.Fails : verdict.AtTheEdge > 0 ? Standing.AtTheEdge : Standing.Stands;
        return new VerdictLine(
            standing, StudioVerdictText.Of(verdict),
            first is null ? "" : $"{CheckText.Name(first)}: {CheckText.Shortfall(first)}",
            first is null ? "" : CheckText.Remedy(first));
    }

    private static CheckLine Check(PlanCheck check, Plan plan) => new(
        CheckText.Name(check), check.Passed, CheckText.Demand(check), CheckText.Capacity(check),
        CheckText.Remedy(check), CheckText.Keys(check, plan), Bibliography.Cite(check.SourceKey, CheckText.Locator(check)));

    private static IReadOnlyList<Fault> Faults(KitReadResult read) => [.. read.Diagnostics.Select(FaultTelling.Of)];
}
