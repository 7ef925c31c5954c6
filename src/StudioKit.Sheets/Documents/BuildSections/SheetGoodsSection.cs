using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Panel, skirts and what else is cut from sheets.</summary>
internal static class SheetGoodsSection
{
    public static IEnumerable<Block> Of(Workshop workshop, Measures measures)
    {
        if (workshop.SheetParts.Count == 0)
        {
            yield break;
        }

        yield return new Heading(workshop.SheetParts.Any(part => part.Kind == SheetPartKind.Panel) ? "Panel and sheet goods, for one studio" : "Sheet goods, for one studio", 2);
        yield return new Table(
            [new Column("Part"), new Column("From"), new Column("Size"), new Column("Count", ColumnKind.Right), new Column("Direction")],
            [.. workshop.SheetParts.Select(part => new TableRow(
                [part.Purpose, part.Material, $"{measures.Of(part.Width)} × {measures.Of(part.Height)}", BuildFigures.Count(part.Count), part.KeepsDirection ? "as it lies" : "may turn"]))]);
        yield return new Paragraph($"Leave the film on until the sheet is clipped on, and keep the same side up. {ProofText.Of(workshop.SheetCuts.Proof)}");
        yield return new Caution(UsualCautions.CuttingAcrylic);
        foreach (var sheet in workshop.SheetCuts.Sheets)
        {
            yield return new DrawingBlock(SheetCutDrawing.Of(sheet), MaxHeight: 90);
        }
    }
}
