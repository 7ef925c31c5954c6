using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The light on the panel on a sheet of its own.</summary>
internal static class LightSheet
{
    public static SheetDocument Make(Plan plan, Stamp stamp, PageSetup page) => new(
        "Light",
        stamp,
        page,
        [
            new Heading($"Light on the {(plan.PanelLights.Count > 0 ? "panel" : "sheet")} of {plan.Kit.Name}"),
            new Caution(UsualCautions.Flash, "Flashes"),
            .. plan.SheetLights.SelectMany(light => LightSection.Of(plan, light)),
        ]);
}
