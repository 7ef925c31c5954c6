using StudioKit.Planning;
using StudioKit.Sheets.Documents.BuildSections;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>Templates at full size, apart from the build sheet, as they are cut out and their backs stay blank.</summary>
internal static class TemplatesSheet
{
    public static SheetDocument Make(Plan plan, FramePlan frame, Stamp stamp, PageSetup page) =>
        new("Templates", stamp, page, [.. TemplatesSection.Of(plan, frame, page)]) { OneSided = true };
}
