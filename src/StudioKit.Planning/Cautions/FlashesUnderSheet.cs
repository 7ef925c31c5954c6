using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Cautions;

/// <summary>The flashes that fire up through the sheet.</summary>
internal static class FlashesUnderSheet
{
    /// <summary>Each flash in each of its places; as the kit puts them where no frame holds any.</summary>
    public static IReadOnlyList<FlashUnderSheet> Of(Plan plan) => plan.Frame is { LowerFlashes.Count: > 0 } frame
        ? [.. frame.LowerFlashes.Select(flash => new FlashUnderSheet(flash.Flash, flash.SetUps, flash.BelowPanel, flash.Support))]
        : [.. PlanStages.OnPanel(plan.Kit)
            .SelectMany(setUp => setUp.Lights.Where(light => light.Role == LightRole.Below).Select(light => (light.Flash, light.Distance, SetUp: setUp.Name)))
            .GroupBy(light => (light.Flash, light.Distance))
            .Select(light => new FlashUnderSheet(light.Key.Flash, [.. light.Select(one => one.SetUp)], light.Key.Distance, Support: null))];
}
