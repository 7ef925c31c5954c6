using System.Text;
using StudioKit.Planning;
using StudioKit.Planning.Cutting.Tables;

namespace StudioKit.Sheets.Documents;

/// <summary>Cut plan and shopping list as files of comma-separated tables.</summary>
internal static class BuildTables
{
    public static IReadOnlyList<SheetFile> Of(Workshop workshop) =>
    [
        Csv("pipe-cuts.csv", CutPlanTables.Of(workshop.PipeCuts)),
        Csv("sheet-cuts.csv", CutPlanTables.Of(workshop.SheetCuts)),
        Csv("shopping.csv", ShoppingTable.Of(workshop)),
    ];

    private static SheetFile Csv(string name, string text) => new(name, Encoding.UTF8.GetBytes(text), []);
}
