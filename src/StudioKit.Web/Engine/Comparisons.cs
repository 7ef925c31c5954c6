using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine;

/// <summary>Two states of a kit side by side.</summary>
/// <param name="plans">Where plans come from.</param>
internal sealed class Comparisons(PlannedKits plans)
{
    private const string None = "–";

    /// <summary>How they differ.</summary>
    public CompareAnswer Answer(CompareRequest request)
    {
        var (first, second) = (plans.Of(request.First, request.FileName), plans.Of(request.Second, request.FileName));
        var verdicts = new StatePair("verdict", Verdict(first), Verdict(second));
        var measures = Measures(first.Plan, second.Plan);
        return first.Plan is { } before && second.Plan is { } after
            ? Compared(new PlanComparison(before, after), verdicts, measures)
            : new CompareAnswer(verdicts, measures, "", []);
    }

    private static CompareAnswer Compared(PlanComparison comparison, StatePair verdicts, IReadOnlyList<StatePair> measures) => new(
        verdicts, measures, MassText(comparison),
        [.. ComparisonText.Lines(comparison).Where(line => line.Differs).Select(line => new StatePair(line.Subject, line.First, line.Second))]);

    private static string MassText(PlanComparison comparison) => comparison.MassDifference.Grams switch
    {
        0 => "Both weigh the same.",
        > 0 => $"The second is {MeasureFormat.Mass(comparison.MassDifference)} heavier.",
        _ => $"The second is {MeasureFormat.Mass(-comparison.MassDifference)} lighter.",
    };

    private static string Verdict((KitReadResult Read, Plan? Plan) state)
    {
        var verdict = PlanTelling.Verdict(state.Read, state.Plan);
        return $"{verdict.Text} {verdict.FirstFailing}".TrimEnd();
    }

    private static IReadOnlyList<StatePair> Measures(Plan? first, Plan? second)
    {
        var (before, after) = (Texts(first), Texts(second));
        return [.. before.Keys.Concat(after.Keys).Distinct(StringComparer.Ordinal).Select(name => new StatePair(name, before.GetValueOrDefault(name, None), after.GetValueOrDefault(name, None)))];

        static Dictionary<string, string> Texts(Plan? plan) =>
            plan is null ? [] : MeasureTelling.Of(plan).ToDictionary(measure => measure.Name, measure => measure.Value, StringComparer.Ordinal);
    }
}
