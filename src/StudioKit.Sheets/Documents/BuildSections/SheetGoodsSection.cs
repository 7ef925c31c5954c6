using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Panel, skirts and what else is cut from sheets.</summary>
internal static class SheetGoodsSection
{
    // A roll of cloth at 1:20, whose parts then hold their names.
    private const double TallestCut = 105;

    public static IEnumerable<Block> Of(Workshop workshop)
    {
        if (workshop.SheetParts.Count == 0)
        {
            yield break;
        }

        yield return new Heading(workshop.SheetParts.Any(part => part.Kind == SheetPartKind.Panel) ? "Panel and sheet goods, for one studio" : "Sheet goods, for one studio", 2);
        yield return new Table(
            [new Column("Part"), new Column("From"), new Column("Size"), new Column("Count", ColumnKind.Right), new Column("Direction")],
            [.. workshop.SheetParts.Select(part => new TableRow(
                [part.Purpose, part.MaterialName, $"{CutFormat.CutLength(part.Width)} × {CutFormat.CutLength(part.Height)}", BuildFigures.Count(part.Count), part.KeepsDirection ? "as it lies" : "may turn"]))]);
        yield return new Paragraph($"Leave the film on until the sheet is clipped on, and keep the same side up. {ProofText.Of(workshop.SheetCuts.Proof)}");
        yield return new Caution(UsualCautions.CuttingAcrylic, SizePt: TypeScale.Small);
        foreach (var alike in workshop.SheetCuts.Sheets.Where(sheet => sheet.Panels.Count > 1).GroupBy(Cut))
        {
            yield return Drawn([.. alike]);
        }

        foreach (var pair in workshop.SheetCuts.Sheets.Where(sheet => sheet.Panels.Count == 1).GroupBy(Cut).Chunk(2))
        {
            yield return pair.Length == 1 ? Drawn([.. pair[0]]) : new SideBySide([.. pair.Select(alike => ((Block)Drawn([.. alike]), 1.0))]);
        }

        foreach (var missing in workshop.SheetCuts.Uncut)
        {
            yield return new Caution(UncutText.Of(missing), "Not cut");
        }
    }

    private static DrawingBlock Drawn(IReadOnlyList<CutSheet> alike)
    {
        var drawing = SheetCutDrawing.Of(alike[0]);
        return new DrawingBlock(drawing, MaxHeight: TallestCut, Caption: alike.Count == 1
            ? drawing.Title
            : $"Sheets {string.Join(", ", alike.Select(sheet => BuildFigures.Count(sheet.Number)))}, cut alike{drawing.Title[drawing.Title.IndexOf(':', StringComparison.Ordinal)..]}");
    }

    // Sheets with the same pieces in the same places are drawn once.
    private static (string Stock, ValueList<PlacedPanel> Panels) Cut(CutSheet sheet) => (sheet.StockLabel, [.. sheet.Panels]);
}
