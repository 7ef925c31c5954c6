using System.Globalization;
using System.Text;
using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary>A cut plan for a person at a terminal.</summary>
internal static class CutPlanText
{
    public static string Of(BarCutPlan plan)
    {
        var text = new StringBuilder();
        foreach (var bar in plan.Bars)
        {
            var pieces = string.Join(", ", bar.Marks.Select(mark => $"{mark.Label} {Text(mark.Length)} (to {Text(mark.End)})"));
            text.Append(CultureInfo.InvariantCulture, $"bar {bar.Number}, {Text(bar.StockLength)} mm: {pieces}; left {Text(bar.Offcut)} mm\n");
        }

        text.Append(CultureInfo.InvariantCulture, $"{plan.TotalBars} bars, {plan.DistinctPatterns} ways of cutting, cost {plan.TotalCost}\n");
        Shopping(text, plan.Bars.Select(bar => bar.StockLabel));
        return text.Append(Proof(plan.Proof)).Append('\n').Append(BarCutPlan.KerfConvention).Append('\n').ToString();
    }

    public static string Of(SheetCutPlan plan)
    {
        var text = new StringBuilder();
        foreach (var sheet in plan.Sheets)
        {
            text.Append(CultureInfo.InvariantCulture, $"sheet {sheet.Number}, {Text(sheet.StockWidth)} x {Text(sheet.StockHeight)} mm:\n");
            foreach (var panel in sheet.Panels)
            {
                var turned = panel.Turned ? ", turned" : "";
                text.Append(CultureInfo.InvariantCulture, $"  {panel.Label} {Text(panel.Width)} x {Text(panel.Height)} mm at {Text(panel.X)}, {Text(panel.Y)} mm{turned}\n");
            }
        }

        text.Append(CultureInfo.InvariantCulture, $"{plan.TotalSheets} sheets, cost {plan.TotalCost}\n");
        Shopping(text, plan.Sheets.Select(sheet => sheet.StockLabel));
        return text.Append(Proof(plan.Proof)).Append('\n').Append(SheetCutPlan.KerfConvention).Append('\n').ToString();
    }

    private static void Shopping(StringBuilder text, IEnumerable<string> labels)
    {
        foreach (var group in labels.GroupBy(label => label, StringComparer.Ordinal))
        {
            text.Append(CultureInfo.InvariantCulture, $"  {group.Count()} of {group.Key}\n");
        }
    }

    private static string Proof(CutProof proof) => proof switch
    {
        { Complete: false } => $"Not every piece can be cut ({proof.Method}).",
        { ProvenOptimal: true } => $"Proven: no plan can be better ({proof.Method}).",
        _ => string.Create(CultureInfo.InvariantCulture, $"At most {100 * proof.Gap:0.##} % above the best plan ({proof.Method})."),
    };

    private static string Text(Length length) => length.Millimeters.ToString("0.#", CultureInfo.InvariantCulture);
}
