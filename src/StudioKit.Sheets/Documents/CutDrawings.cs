using StudioKit.Planning;

namespace StudioKit.Sheets.Documents;

/// <summary>The drawings of a cut list.</summary>
internal static class CutDrawings
{
    public static IEnumerable<NamedDrawing> Of(Plan plan, Workshop workshop)
    {
        if (workshop.PipeCuts.Bars.Count > 0)
        {
            yield return new NamedDrawing("pipe-cuts", BarCutDrawing.Of(workshop.PipeCuts));
        }

        foreach (var sheet in workshop.SheetCuts.Sheets)
        {
            yield return new NamedDrawing(FormattableString.Invariant($"sheet-cuts-{sheet.Number}"), SheetCutDrawing.Of(sheet));
        }

        if (plan.Frame is not null)
        {
            yield return new NamedDrawing("panel", PanelDrawing.Of(plan.Panel));
        }
    }
}
