using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Views;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.Previewing;

/// <summary>One place of a lit panel, as each framing of its set-up has it at the planned powers.</summary>
public static class PanelPoint
{
    /// <summary>Looks at a place.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="setUp">Name of a set-up that lights the panel.</param>
    /// <param name="place">The place; one off the sheet is none.</param>
    /// <returns>One for each framing that sees the panel; empty where the set-up has no light on it, or the place is off the sheet.</returns>
    /// <exception cref="ArgumentNullException">There is no plan or no set-up.</exception>
    public static IReadOnlyList<PointInFraming> Of(Plan plan, string setUp, PanelPlace place)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(setUp);
        return plan.PanelLights.FirstOrDefault(light => light.SetUp == setUp) is { } panel && IsOn(panel, place)
            ? [.. plan.Exposures.Where(exposure => exposure.SetUp == setUp).Select(exposure => Of(plan, exposure, place)).OfType<PointInFraming>()]
            : [];
    }

    private static bool IsOn(PanelLightPlan panel, PanelPlace place) =>
        Math.Abs(place.Across.Meters) <= panel.PanelWidth.Meters / 2 && place.AlongSheet.Meters >= 0 && place.AlongSheet <= panel.PanelDepth;

    private static PointInFraming? Of(Plan plan, ExposurePlan exposure, PanelPlace place)
    {
        var setUp = plan.Kit.SetUps.First(other => other.Name == exposure.SetUp);
        var framing = plan.PlannedFramings.First(other => other.Plan.Name == exposure.Framing.Name);
        var camera = LightingCases.Camera(plan.Kit, setUp, framing, exposure.Aperture) with { Iso = exposure.Iso };
        if (plan.Light is not { } light || exposure.Lights.FirstOrDefault(used => used.Role == LightRole.Below) is not { } below || exposure.WhiteMargin is not { } darkest)
        {
            return null;
        }

        var views = light.Seen(setUp, framing, camera).Select(view => View(view.Margins, below, place)).ToList();
        return views.Count == 0 ? null : new PointInFraming(exposure.Framing.Name, views, Budget(below, darkest, Deciding(views)));
    }

    private static PointInView View(WhiteMarginMap margins, LightPlan below, PanelPlace place) =>
        new(margins.View.Pitch, margins.View.Roll, IsInside(place, margins.Seen.Outline), margins.At(place) - new Stops(below.Power.StopsBelowFull));

    // The darkest of those that see it; where none does, of all.
    private static PointInView Deciding(IReadOnlyList<PointInView> views) =>
        views.Where(view => view.IsSeen).MinBy(view => view.Margin.Value) ?? views.MinBy(view => view.Margin.Value)!;

    // The account of the darkest visible point, carried on to this one.
    private static LightBudget Budget(LightPlan below, Stops darkest, PointInView view) => new(
    [
        .. below.Budget.Lines,
        new LightBudgetLine("This place against the darkest visible point", view.Margin - darkest, "from the light map", "Derived", "light map of the panel"),
    ]);

    // Even–odd: a ray to the right leaves a closed outline as often as it came in.
    private static bool IsInside(PanelPlace place, IReadOnlyList<PanelPlace> outline)
    {
        var (x, y, isInside) = (place.Across.Meters, place.AlongSheet.Meters, false);
        for (var i = 0; i < outline.Count; i++)
        {
            var (one, other) = (outline[i], outline[(i + 1) % outline.Count]);
            var (from, to) = (one.AlongSheet.Meters, other.AlongSheet.Meters);
            if (from > y != to > y && x < one.Across.Meters + ((y - from) / (to - from) * (other.Across.Meters - one.Across.Meters)))
            {
                isInside = !isInside;
            }
        }

        return isInside;
    }
}
