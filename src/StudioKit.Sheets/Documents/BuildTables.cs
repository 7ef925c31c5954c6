using System.Text;
using StudioKit.Planning;
using StudioKit.Planning.Cutting.Tables;

namespace StudioKit.Sheets.Documents;

/// <summary>Cut plan and shopping list as files of comma-separated tables.</summary>
internal static class BuildTables
{
    public static IReadOnlyList<SheetFile> Of(FramePlan frame) =>
    [
        Csv("pipe-cuts.csv", CutPlanTables.Of(frame.PipeCuts)),
        Csv("sheet-cuts.csv", CutPlanTables.Of(frame.SheetCuts)),
        Csv("shopping.csv", ShoppingTable.Of(frame)),
    ];

    private static SheetFile Csv(string name, string text) => new(name, Encoding.UTF8.GetBytes(text), []);
}
