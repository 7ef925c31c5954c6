using UnitsNet;

namespace StudioKit.Planning.Cutting.Reports;

/// <summary>What every cut plan says of itself in plain numbers: lengths in millimetres, names end in their unit.</summary>
public abstract record CutReport
{
    /// <summary>Money spent [1].</summary>
    public required decimal TotalCost { get; init; }

    /// <summary>How good the plan is.</summary>
    public required ReportedProof Proof { get; init; }

    /// <summary>Whether no plan can be better.</summary>
    public required bool ProvenOptimal { get; init; }

    /// <summary>No plan can be below this: money, or bars or sheets where no stock has a price [1].</summary>
    public required decimal LowerBound { get; init; }

    /// <summary>Width of one cut [mm].</summary>
    public required double KerfMm { get; init; }

    /// <summary>Squared off every bar or sheet [mm].</summary>
    public required double TrimMm { get; init; }

    /// <summary>Pieces that can't be cut.</summary>
    public required IReadOnlyList<ReportedUncut> Uncut { get; init; }

    /// <summary>Stock after the job.</summary>
    public required IReadOnlyList<ReportedStock> StockForNextTime { get; init; }

    /// <summary>Millimetres without the noise of a conversion from inches.</summary>
    internal static double Millimeters(Length length) => Math.Round(length.Millimeters, 4);
}
