namespace StudioKit.Planning.Cutting.Reports;

/// <summary>A sheet plan in plain numbers, for other programs: lengths in millimetres, names end in their unit.</summary>
public sealed record SheetCutReport
{
    /// <summary>Sheets in the order of cutting.</summary>
    public required IReadOnlyList<ReportedSheet> Sheets { get; init; }

    /// <summary>Number of sheets taken [1].</summary>
    public required int TotalSheets { get; init; }

    /// <summary>Money spent [1].</summary>
    public required decimal TotalCost { get; init; }

    /// <summary>How good the plan is.</summary>
    public required ReportedProof Proof { get; init; }

    /// <summary>Whether no plan can be better.</summary>
    public required bool ProvenOptimal { get; init; }

    /// <summary>No plan can be below this: money, or sheets where no stock has a price [1].</summary>
    public required decimal LowerBound { get; init; }

    /// <summary>Width of one cut [mm].</summary>
    public required double KerfMm { get; init; }

    /// <summary>Squared off every sheet [mm].</summary>
    public required double TrimMm { get; init; }

    /// <summary>Pieces that can't be cut.</summary>
    public required IReadOnlyList<UncutPiece> Uncut { get; init; }

    /// <summary>Stock after the job.</summary>
    public required IReadOnlyList<ReportedStock> StockForNextTime { get; init; }

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
            KerfMm = BarCutReport.Millimeters(request.Kerf),
            TrimMm = BarCutReport.Millimeters(request.Trim),
            Uncut = plan.Uncut,
            StockForNextTime =
            [
                .. plan.StockForNextTime.Select(sheet => new ReportedStock(
                    sheet.Label, null, BarCutReport.Millimeters(sheet.Width), BarCutReport.Millimeters(sheet.Height), sheet.Price, sheet.Count)),
            ],
        };
    }
}
