namespace StudioKit.Planning.Cutting.Reports;

/// <summary>A bar plan in plain numbers, for other programs: lengths in millimetres, names end in their unit.</summary>
public sealed record BarCutReport : CutReport
{
    /// <summary>Bars in the order of cutting.</summary>
    public required IReadOnlyList<ReportedBar> Bars { get; init; }

    /// <summary>Number of bars taken [1].</summary>
    public required int TotalBars { get; init; }

    /// <summary>Number of different ways of cutting a bar [1].</summary>
    public required int DistinctPatterns { get; init; }

    /// <summary>Puts a plan into plain numbers.</summary>
    public static BarCutReport From(BarCutRequest request, BarCutPlan plan)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(plan);
        return new BarCutReport
        {
            Bars = [.. plan.Bars.Select(ReportedBar.From)],
            TotalBars = plan.TotalBars,
            TotalCost = plan.TotalCost,
            DistinctPatterns = plan.DistinctPatterns,
            Proof = ReportedProof.From(plan.Proof, BarCutPlan.KerfConvention),
            ProvenOptimal = plan.Proof.ProvenOptimal,
            LowerBound = plan.Proof.LowerBound,
            KerfMm = Millimeters(request.Kerf),
            TrimMm = Millimeters(request.Trim),
            Uncut = [.. plan.Uncut.Select(ReportedUncut.From)],
            StockForNextTime =
            [
                .. plan.StockForNextTime.Select(bar =>
                    new ReportedStock(bar.Label, Millimeters(bar.Length), null, null, bar.Price, bar.Count)),
            ],
        };
    }
}
