using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents.BuildSections;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>Templates at full size, apart from the build sheet, as they are cut out and their backs stay blank.</summary>
internal static class TemplatesSheet
{
    public static SheetDocument Make(Plan plan, FramePlan frame, Stamp stamp, PageSetup page, TextUnits units) =>
        new("Templates", stamp, page, [.. TemplatesSection.Of(plan, frame, new Measures(units), page)]) { OneSided = true };
}
