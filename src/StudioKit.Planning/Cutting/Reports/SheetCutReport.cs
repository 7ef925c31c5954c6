namespace StudioKit.Planning.Cutting.Reports;

/// <summary>A sheet plan in plain numbers, for other programs: lengths in millimetres, names end in their unit.</summary>
public sealed record SheetCutReport : CutReport
{
    /// <summary>Sheets in the order of cutting.</summary>
    public required IReadOnlyList<ReportedSheet> Sheets { get; init; }

    /// <summary>Number of sheets taken [1].</summary>
    public required int TotalSheets { get; init; }

    /// <summary>Puts a plan into plain numbers.</summary>
    public static SheetCutReport From(SheetCutRequest request, SheetCutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        return new SheetCutReport
        {
            Sheets = [.. plan.Sheets.Select(ReportedSheet.From)],
            TotalSheets = plan.TotalSheets,
            TotalCost = plan.TotalCost,
            Proof = ReportedProof.From(plan.Proof, SheetCutPlan.KerfConvention),
            ProvenOptimal = plan.Proof.ProvenOptimal,
            LowerBound = plan.Proof.LowerBound,
            KerfMm = Millimeters(request.Kerf),
            TrimMm = Millimeters(request.Trim),
            Uncut = [.. plan.Uncut.Select(ReportedUncut.From)],
            StockForNextTime =
            [
                .. plan.StockForNextTime.Select(sheet => new ReportedStock(
                    sheet.Label, null, Millimeters(sheet.Width), Millimeters(sheet.Height), sheet.Price, sheet.Count)),
            ],
        };
    }
}
