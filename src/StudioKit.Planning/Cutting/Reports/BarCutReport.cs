using UnitsNet;

namespace StudioKit.Planning.Cutting.Reports;

/// <summary>A bar plan in plain numbers, for other programs: lengths in millimetres, names end in their unit.</summary>
public sealed record BarCutReport
{
    /// <summary>Bars in the order of cutting.</summary>
    public required IReadOnlyList<ReportedBar> Bars { get; init; }

    /// <summary>Number of bars taken [1].</summary>
    public required int TotalBars { get; init; }

    /// <summary>Money spent [1].</summary>
    public required decimal TotalCost { get; init; }

    /// <summary>Number of different ways of cutting a bar [1].</summary>
    public required int DistinctPatterns { get; init; }

    /// <summary>How good the plan is.</summary>
    public required ReportedProof Proof { get; init; }

    /// <summary>Whether no plan can be better.</summary>
    public required bool ProvenOptimal { get; init; }

    /// <summary>No plan can be below this: money, or bars where no stock has a price [1].</summary>
    public required decimal LowerBound { get; init; }

    /// <summary>Width of one saw cut [mm].</summary>
    public required double KerfMm { get; init; }

    /// <summary>Squared off every bar [mm].</summary>
    public required double TrimMm { get; init; }

    /// <summary>Pieces that can't be cut.</summary>
    public required IReadOnlyList<UncutPiece> Uncut { get; init; }

    /// <summary>Stock after the job.</summary>
    public required IReadOnlyList<ReportedStock> StockForNextTime { get; init; }

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
            Uncut = plan.Uncut,
            StockForNextTime =
            [
                .. plan.StockForNextTime.Select(bar =>
                    new ReportedStock(bar.Label, Millimeters(bar.Length), null, null, bar.Price, bar.Count)),
            ],
        };
    }

    /// <summary>Millimetres without the noise of a conversion from inches.</summary>
    internal static double Millimeters(Length length) => Math.Round(length.Millimeters, 4);
}
