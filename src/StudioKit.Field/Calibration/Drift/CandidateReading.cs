namespace StudioKit.Field.Calibration.Drift;

/// <summary>A reading that could be taken next time, and what it would tell of a card's white margin.</summary>
/// <param name="Kind">What to read.</param>
/// <param name="Flash">With which flash.</param>
/// <param name="UncertaintyStops">How well it is read, in stops [1].</param>
/// <param name="Before">Standard uncertainty of the margin now, in stops [1].</param>
/// <param name="After">The same with this one reading more [1].</param>
public sealed record CandidateReading(CalibrationReadingKind Kind, string Flash, double UncertaintyStops, double Before, double After)
{
    /// <summary>Name of what stands before the flash; empty where it is bare.</summary>
    public string Modifier { get; init; } = "";

    /// <summary>Name of the set-up that has the flash so; empty where none has.</summary>
    public string SetUp { get; init; } = "";

    /// <summary>Whether it is a whole power ladder and not a single frame.</summary>
    public bool IsLadder { get; init; }

    /// <summary>How often it was taken in what is known [1].</summary>
    public int Taken { get; init; }

    /// <summary>What endless repeats of it would leave, in stops [1]: an instrument's own error, and what the reading does not depend on.</summary>
    public double Least { get; init; }

    /// <summary>Fewest repeats after which the margin is as sure as asked for [1], 0 where it is already; none where no number of them gets there.</summary>
    public int? Repeats { get; init; }

    /// <summary>Stops by which the margin becomes surer [1].</summary>
    public double Gain => Before - After;

    /// <summary>Information that it gives of the margin [bit].</summary>
    public double Bits => LinearGaussian.Bits(Before * Before, After * After);
}
