using System.Globalization;
using StudioKit.Planning;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>The figures that a change of the kit is judged by.</summary>
internal static class MeasureTelling
{
    public static IReadOnlyList<Measure> Of(Plan plan) => [.. Margin(plan), .. Panel(plan), .. Mass(plan), .. Cost(plan), .. Cells(plan)];

    private static IEnumerable<Measure> Margin(Plan plan)
    {
        if (plan.Exposures.Where(exposure => exposure.WhiteMargin is not null).MinBy(exposure => exposure.WhiteMargin!.Value.Value) is { } darkest)
        {
            yield return new Measure(
                "darkest white", $"{darkest.WhiteMargin!.Value.Nominal} stop",
                $"The least margin of all cards: {darkest.SetUp}, {darkest.Framing.Name}, at the darkest point of the sheet that its frame shows. {MeasureFormat.ThreeDigits(Math.Round(darkest.Uncertainty.Value, 2))} stop give or take.");
        }
    }

    private static IEnumerable<Measure> Panel(Plan plan)
    {
        if (plan.Panel.Width.Meters > 0)
        {
            var needed = PlanFormat.Rectangle(plan.Panel.RequiredWidth, plan.Panel.RequiredDepth);
            yield return new Measure(
                "panel", PlanFormat.Rectangle(plan.Panel.Width, plan.Panel.Depth),
                plan.Panel.LargestFraming is { } largest ? $"{needed} is needed, set by {largest}." : $"{needed} is needed.");
        }
    }

    private static IEnumerable<Measure> Mass(Plan plan)
    {
        yield return new Measure(
            "carried", MeasureFormat.Mass(plan.Pack.Total),
            $"{MeasureFormat.Mass(plan.Pack.Weighed)} as the kit says it was weighed, {MeasureFormat.Mass(plan.Pack.FromGeometry)} from sizes and densities, {MeasureFormat.Mass(plan.Pack.Assumed)} assumed; the rest is bags.");
    }

    private static IEnumerable<Measure> Cost(Plan plan)
    {
        if (plan.Workshop is { TotalCost: { } cost } workshop)
        {
            yield return new Measure(
                "to buy", string.Create(CultureInfo.InvariantCulture, $"{cost:0.00} {workshop.Currency}"),
                "Pipes, fittings and sheets of the shopping list, at the kit's prices; pipes are shared out first-fit here, and the command line may need fewer.");
        }
    }

    private static IEnumerable<Measure> Cells(Plan plan)
    {
        if (plan.Exposures.SelectMany(exposure => exposure.Lights).MinBy(light => light.FlashesCarried) is { } least)
        {
            yield return new Measure(
                "flashes carried", string.Create(CultureInfo.InvariantCulture, $"{least.FlashesCarried}"),
                $"From the cells for {least.Flash} at {least.PowerText}, the hungriest light of all cards; a fifth of each set is kept in reserve.");
        }
    }
}
