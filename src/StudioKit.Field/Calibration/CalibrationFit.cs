namespace StudioKit.Field.Calibration;

/// <summary>How well readings agree, all corrections made.</summary>
/// <param name="ChiSquare">Squares of what is left of each reading and of each correction, each over its own variance [1]; about <paramref name="Readings"/> where all is as stated.</param>
/// <param name="Readings">Readings that had a say [1].</param>
/// <param name="Probability">Chance that sound readings agree no better than these [1].</param>
public sealed record CalibrationFit(double ChiSquare, int Readings, double Probability)
{
    /// <summary>Chance under which readings count as contradicting each other [1]: sound ones are turned away once in a thousand outings.</summary>
    public const double LeastProbability = 0.001;

    /// <summary>Whether the readings can be taken at their word.</summary>
    public bool IsPlausible => Probability >= LeastProbability;
}
