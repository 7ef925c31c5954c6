using StudioKit.Planning;

namespace StudioKit.Wording;

/// <summary>Two kits side by side in words.</summary>
public static class ComparisonText
{
    private const string None = "–";

    /// <summary>What is compared: mass, panel, framings, exposures, checks.</summary>
    public static IReadOnlyList<ComparedLine> Lines(PlanComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return
        [
            Line(comparison, "mass", plan => MeasureFormat.Mass(plan.Pack.Total)),
            Line(comparison, "panel", plan => PlanFormat.Rectangle(plan.Panel.Width, plan.Panel.Depth)),
            Line(comparison, "panel needed", plan => PlanFormat.Rectangle(plan.Panel.RequiredWidth, plan.Panel.RequiredDepth)),
            Line(comparison, "panel mass", plan => MeasureFormat.Mass(plan.Panel.Mass)),
            Line(comparison, "checks that fail", plan => FormattableString.Invariant($"{plan.Checks.Count(check => !check.Passed)} of {plan.Checks.Count}")),
            .. Named(comparison, plan => plan.Framings, framing => framing.Name, framing => framing.Limit is { } limit ? ReachText.Of(limit) : $"{PlanFormat.Millimetres(framing.WorkingDistance)} to the glass"),
            .. Named(comparison, plan => plan.Exposures, exposure => $"{exposure.SetUp}, {exposure.Framing.Name}", Settings),
            .. Named(comparison, plan => plan.Checks, CheckText.Name, check => check.Passed ? $"ok, {CheckText.Capacity(check)}" : $"FAILS, {CheckText.Shortfall(check)}"),
        ];
    }

    private static ComparedLine Line(PlanComparison comparison, string subject, Func<Plan, string> text) =>
        new(subject, text(comparison.First), text(comparison.Second));

    private static IEnumerable<ComparedLine> Named<T>(PlanComparison comparison, Func<Plan, IEnumerable<T>> items, Func<T, string> name, Func<T, string> text)
    {
        var first = Texts(comparison.First);
        var second = Texts(comparison.Second);
        return first.Keys.Concat(second.Keys).Distinct(StringComparer.Ordinal)
            .Select(key => new ComparedLine(key, first.GetValueOrDefault(key, None), second.GetValueOrDefault(key, None)));

        Dictionary<string, string> Texts(Plan plan) => items(plan)
            .GroupBy(name, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => string.Join("; ", group.Select(text)), StringComparer.Ordinal);
    }

    private static string Settings(ExposurePlan exposure)
    {
        var powers = string.Join(", ", exposure.Lights.Select(light => $"{light.Flash} {light.PowerText}"));
        var margin = exposure.WhiteMargin is { } white ? $", white margin {white.Nominal} stop" : "";
        var fault = exposure.Verdict.Verdict == Verdict.Works ? "" : $", {VerdictText.Word(exposure)}";
        return $"{exposure.Aperture.Nominal}, {exposure.Shutter.Nominal}, {exposure.Iso.Nominal}, {powers}{margin}{fault}";
    }
}
