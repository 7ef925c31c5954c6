namespace StudioKit.Field.Calibration.Drift;

/// <summary>How a quantity went from outing to outing.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Flash">Name of the flash, where it is of one; empty otherwise.</param>
/// <param name="Outings">What each outing says that tells it apart from the others, by day.</param>
/// <param name="PerYear">Line through them, in stops over years from the first; none with fewer than three outings, or all on one day.</param>
public sealed record QuantityDrift(DriftingKind Kind, string Flash, IReadOnlyList<OutingEstimate> Outings, WeightedLine? PerYear)
{
    /// <summary>Probability of the interval [1].</summary>
    public const double Confidence = 0.95;

    // Flashes repeat to a twentieth of a stop; less than that is nothing to plan by, however well it is known.
    private const double LeastStops = 0.05;

    /// <summary>How much the outings differ among themselves; none with fewer than three.</summary>
    public OutingScatter? Scatter => Outings.Count < OutingScatter.FewestOutings ? null : OutingScatter.Of(Outings);

    /// <summary>First to last outing in years [1].</summary>
    public double Years => Outings.Count == 0 ? 0 : (Outings[^1].Day.DayNumber - Outings[0].Day.DayNumber) / CalibrationHistory.DaysOfYear;

    /// <summary>Drift from the first outing to the last, in stops [1]; none where it cannot be told.</summary>
    public double? Stops => PerYear?.Slope * Years;

    /// <summary>Half the width of its interval of confidence, in stops [1]; none where it cannot be told.</summary>
    public double? PlusMinus => PerYear?.SlopeInterval(Confidence) * Years;

    /// <summary>Whether the interval leaves out no drift at all, and the drift is more than flashes differ from one firing to the next.</summary>
    public bool IsSignificant => Stops is { } drift && PlusMinus is { } interval && Math.Abs(drift) > Math.Max(interval, LeastStops);
}
