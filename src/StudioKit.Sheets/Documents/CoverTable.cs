using StudioKit.Planning;
using StudioKit.Planning.Covers;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What is seen through the cover of a set-up: a row for each framing and camera angle.</summary>
internal static class CoverTable
{
    public static IEnumerable<Block> Of(CoverPlan? cover)
    {
        if (cover is null)
        {
            yield break;
        }

        yield return new Paragraph(CoverText.Whole(cover), TypeScale.Small, TextWeight.Bold);
        if (cover.Framings.Count > 0)
        {
            yield return new KeepTogether(Table(cover));
            yield return new Paragraph(
                "Losses: of the sheet's light where the frame loses most, and of the subject's. Drawn apart: between what is sharp along and across the slant, against the depth of field. "
                + "A flash that shows on burnt-out white is not seen.",
                TypeScale.Small);
        }
    }

    private static Table Table(CoverPlan cover) => new(
        [
            new Column("Framing"), new Column("Angle", ColumnKind.Right), new Column("Through"), new Column("Sheet loses, stops", ColumnKind.Decimal), new Column("Subject loses, stops", ColumnKind.Decimal),
            new Column($"Glass to it, {FigureFormat.FigureUnit}", ColumnKind.Decimal), new Column($"Seems nearer by, {FigureFormat.FigureUnit}", ColumnKind.Decimal), new Column($"Drawn apart, {FigureFormat.FigureUnit}", ColumnKind.Decimal), new Column($"Sharp over, {FigureFormat.FigureUnit}", ColumnKind.Decimal),
            new Column("Flashes that show"), new Column("Clear at"),
        ],
        [.. cover.Framings.SelectMany(framing => framing.Views.Select(view => Row(framing, view)))],
        TypeScale.Small);

    private static TableRow Row(CoveredFraming framing, CoveredView view) => new(
    [
        framing.Framing,
        MeasureFormat.Degrees(view.Pitch),
        CoverText.Face(view.Seen),
        FormattableString.Invariant($"{view.Seen.SheetLoss.Value:0.00}"),
        FormattableString.Invariant($"{view.Seen.SubjectLoss.Value:0.00}"),
        FigureFormat.WholeFigure(view.Room),
        FigureFormat.RoughFigure(view.Seen.Distance - view.Seen.SeemingDistance),
        FigureFormat.RoughFigure(view.Seen.AstigmaticDifference),
        FigureFormat.RoughFigure(framing.DepthOfField),
        CoverText.Shown(view),
        framing.Clear.Count == 0 ? "no angle" : CoverText.Ranges(framing.Clear),
    ]);
}
