using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Two kits side by side.</summary>
/// <param name="First">Plan of the first kit.</param>
/// <param name="Second">Plan of the second kit.</param>
public sealed record PlanComparison(Plan First, Plan Second)
{
    private const string None = "–";

    /// <summary>How much heavier the second kit is; negative where it is lighter.</summary>
    public Mass MassDifference => Second.Pack.Total - First.Pack.Total;

    /// <summary>What is compared: mass, panel, framings, exposures, checks.</summary>
    public IReadOnlyList<ComparedLine> Lines =>
    [
        Line("mass", plan => PlanFormat.Mass(plan.Pack.Total)),
        Line("panel", plan => PlanFormat.Rectangle(plan.Panel.Width, plan.Panel.Depth)),
        Line("panel needed", plan => PlanFormat.Rectangle(plan.Panel.RequiredWidth, plan.Panel.RequiredDepth)),
        Line("panel mass", plan => PlanFormat.Mass(plan.Panel.Mass)),
        Line("checks that fail", plan => FormattableString.Invariant($"{plan.Checks.Count(check => !check.Passed)} of {plan.Checks.Count}")),
        .. Named(plan => plan.Framings, framing => framing.Name, framing => framing.Limit ?? $"{PlanFormat.Millimetres(framing.WorkingDistance)} to the glass"),
        .. Named(plan => plan.Exposures, exposure => $"{exposure.SetUp}, {exposure.Framing.Name}", Settings),
        .. Named(plan => plan.Checks, check => check.Name, check => check.Passed ? $"ok, {check.Capacity}" : $"FAILS, {check.Demand} asked, {check.Capacity} given"),
    ];

    private ComparedLine Line(string subject, Func<Plan, string> text) => new(subject, text(First), text(Second));

    private IEnumerable<ComparedLine> Named<T>(Func<Plan, IEnumerable<T>> items, Func<T, string> name, Func<T, string> text)
    {
        var first = Texts(First);
        var second = Texts(Second);
        return first.Keys.Concat(second.Keys).Distinct(StringComparer.Ordinal)
            .Select(key => new ComparedLine(key, first.GetValueOrDefault(key, None), second.GetValueOrDefault(key, None)));

        Dictionary<string, string> Texts(Plan plan) => items(plan)
            .GroupBy(name, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => string.Join("; ", group.Select(text)), StringComparer.Ordinal);
    }

    private static string Settings(ExposurePlan exposure)
    {
        var powers = string.Join(", ", exposure.Lights.Select(light => $"{light.Flash} {light.PowerMark}"));
        var margin = exposure.WhiteMargin is { } white ? $", white margin {white.Nominal} stop" : "";
        var fault = exposure.Works ? "" : ", does not work";
        return $"{exposure.Aperture.Nominal}, {exposure.Shutter.Nominal}, {exposure.Iso.Nominal}, {powers}{margin}{fault}";
    }
}
