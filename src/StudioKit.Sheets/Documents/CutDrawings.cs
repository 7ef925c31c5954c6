using StudioKit.Planning;

namespace StudioKit.Sheets.Documents;

/// <summary>The drawings of a cut list.</summary>
internal static class CutDrawings
{
    public static IEnumerable<NamedDrawing> Of(Plan plan, FramePlan frame)
    {
        if (frame.PipeCuts.Bars.Count > 0)
        {
            yield return new NamedDrawing("pipe-cuts", BarCutDrawing.Of(frame.PipeCuts));
        }

        foreach (var sheet in frame.SheetCuts.Sheets)
        {
            yield return new NamedDrawing(FormattableString.Invariant($"sheet-cuts-{sheet.Number}"), SheetCutDrawing.Of(sheet));
        }

        yield return new NamedDrawing("panel", PanelDrawing.Of(plan.Panel));
    }
}
