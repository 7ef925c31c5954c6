using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration;

/// <summary>Tells readings that can be of this kit from slips, and a sound calibration from one that nobody should plan by.</summary>
internal static class CalibrationPlausibility
{
    /// <summary>Standard uncertainties beyond which a reading is no chance [1]: chance alone puts one in 16,000 so far off.</summary>
    public const double Hopeless = 4;

    // A kit's figures and the reading's own uncertainty together say how far a reading can lie from the plan; beyond it somebody slipped.
    [Source("Gelman2013", "prior predictive distribution of a normal model")]
    public static bool[] Possible(IReadOnlyList<CalibrationReading> readings, Matrix<double> design, Vector<double> differences, double[] prior) =>
        [.. readings.Select((reading, i) => Math.Abs(differences[i]) <= Hopeless * Foreseen(reading, design.Row(i), prior))];

    private static double Foreseen(CalibrationReading reading, Vector<double> effect, double[] prior) =>
        Math.Sqrt((reading.Uncertainty * reading.Uncertainty) + effect.Select((share, i) => share * share * prior[i] * prior[i]).Sum());

    public static FieldDiagnostic Impossible(CalibrationReading reading, double difference, Vector<double> effect, double[] prior) => new(
        "FLD216",
        reading.Name,
        FormattableString.Invariant($"It lies {difference:+0.0;-0.0} stops from the plan; the kit's own figures allow {Hopeless * Foreseen(reading, effect, prior):0.0}."),
        "Check power, distance, zoom and what was read; where the kit's figure itself is a guess, write how sure it is, e.g. ± 1 stop.");

    public static FieldDiagnostic? Fault(CalibrationResult result, bool[] possible)
    {
        if (result.Fit.Readings * 2 < possible.Length)
        {
            return new FieldDiagnostic(
                "FLD217", "calibration", $"Only {result.Fit.Readings} of {possible.Length} readings agree with each other and with what the kit's figures allow.", "Check how they were taken, and leave out the wrong ones.");
        }

        if (!result.Fit.IsPlausible)
        {
            return new FieldDiagnostic(
                "FLD218",
                "calibration",
                FormattableString.Invariant($"The readings contradict each other: chi-square {result.Fit.ChiSquare:0} for {result.Fit.Readings} readings, which chance gives once in {1 / Math.Max(result.Fit.Probability, 1e-9):0} times."),
                $"Furthest off, in stops: {string.Join(", ", Furthest(result))}. Check how they were taken, or state a larger uncertainty for them.");
        }

        var most = result.Quantities.MaxBy(quantity => Math.Abs(quantity.CorrectionStops))!;
        return Math.Abs(most.CorrectionStops) > KitCorrection.MostStops
            ? new FieldDiagnostic("FLD219", "calibration", FormattableString.Invariant($"{most.Name} would be corrected by {most.CorrectionStops:+0.0;-0.0} stops, more than any figure is wrong."), "Check how it was set up.")
            : null;
    }

    // Readings strain against each other and against the kit's figures alike; what takes most of the sum is named.
    private static IEnumerable<string> Furthest(CalibrationResult result) => result.Quantities
        .Select(quantity => (Off: quantity.CorrectionStops / quantity.PriorStops, Text: FormattableString.Invariant($"{quantity.Name} {quantity.CorrectionStops:+0.0;-0.0} (the kit's figure ± {quantity.PriorStops:0.0#})")))
        .Concat(result.Residuals.Where(residual => residual.IsUsed)
            .Select(residual => (Off: residual.After / residual.Reading.Uncertainty, Text: FormattableString.Invariant($"{residual.Reading.Name} {residual.After:+0.0;-0.0} (± {residual.Reading.Uncertainty:0.0#})"))))
        .OrderByDescending(term => Math.Abs(term.Off)).Take(3).Where(term => Math.Abs(term.Off) > 1).Select(term => term.Text);

    // Under the prior and the stated uncertainties the sum is distributed as chi-square with as many degrees of freedom as there are readings.
    public static CalibrationFit FitOf(IReadOnlyList<CalibrationReading> readings, double[] prior, CalibrationSolution fitted)
    {
        var used = Enumerable.Range(0, readings.Count).Where(i => fitted.Weights[i] > 0).ToList();
        var sum = used.Sum(i => fitted.Weights[i] * Math.Pow(fitted.Left[i] / readings[i].Uncertainty, 2)) + prior.Select((sigma, i) => Math.Pow(fitted.Mean[i] / sigma, 2)).Sum();
        return new CalibrationFit(sum, used.Count, 1 - ChiSquared.CDF(used.Count, sum));
    }
}
