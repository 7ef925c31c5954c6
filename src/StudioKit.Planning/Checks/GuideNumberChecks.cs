using UnitsNet;

namespace StudioKit.Planning.Checks;

/// <summary>Whether each flash is used at a zoom that its guide number is known for, as well as it is said to be known.</summary>
internal static class GuideNumberChecks
{
    /// <summary>A check for each flash and zoom for which the guide number had to be made from another.</summary>
    public static IEnumerable<PlanCheck> Of(IReadOnlyList<ExposurePlan> exposures) => exposures
        .SelectMany(exposure => exposure.Lights)
        .Where(light => light.ZoomDoubt.Value > 0 && light.Zoom is not null)
        .DistinctBy(light => (light.Flash, light.Zoom))
        .Select(light => Of(light, light.Zoom!.Value));

    // What a kit says after ± stands for the number as it is used. Where that is less than the zoom may make of it, the kit promises more than it knows.
    private static PlanCheck Of(LightPlan light, Length zoom)
    {
        var passed = light.ZoomDoubt.Value <= light.GuideNumberUncertainty.Value;
        return new PlanCheck
        {
            Kind = PlanCheckKind.GuideNumberAtZoom,
            Parts = [light.Flash],
            Passed = passed,
            Demand = new CheckAmount.KnownTo(light.GuideNumberUncertainty, zoom),
            Capacity = new CheckAmount.KnownTo(light.ZoomDoubt, zoom),
            Ratio = light.GuideNumberUncertainty.Value > 0 ? light.ZoomDoubt.Value / light.GuideNumberUncertainty.Value : null,
            SourceKey = "CommonPractice",
            SourceLocator = "light of a zoom head lies between no change and the ideal law by solid angle",
            Remedy = passed ? null : new CheckRemedy(CheckRemedyKind.MeasureGuideNumber)
            {
                Amount = new CheckAmount.Measure(zoom),
                Parts = [light.Flash],
                Keys = ["flashes.zooms", "flashes.zoom", "set-ups.lights.zoom"],
            },
        };
    }
}
