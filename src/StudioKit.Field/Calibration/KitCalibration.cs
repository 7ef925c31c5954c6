using MathNet.Numerics.LinearAlgebra;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration;

/// <summary>Corrects a kit's figures from readings: the most probable correction, given the readings and how far the figures may be wrong.</summary>
/// <remarks>
/// Counted in stops everything is a sum, so the posterior is a normal distribution in closed form: (AᵀWA + P⁻¹)·x = AᵀW·d with A one row a
/// reading, d measured less planned, W the inverse variances and P the prior variances. A reading further off than <see cref="Doubtful"/>
/// standard uncertainties gets less weight in turn (Huber's function), so a single bad one cannot pull the kit along.
/// </remarks>
public static class KitCalibration
{
    // At 2.5 normal noise loses 1 % of its information, so the stated uncertainties stay honest.
    private const double Doubtful = 2.5;
    private const double Disagreement = 3;
    private const int Rounds = 30;

    /// <summary>Solves for the corrections.</summary>
    /// <param name="readings">Readings; at least one.</param>
    /// <param name="prior">How far the kit's figures may be wrong.</param>
    /// <returns>The corrections, or which readings cannot be used.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    [Source("Gelman2013", "normal linear model with known variances")]
    [Source("Huber1964", "robust weights")]
    public static FieldResult<CalibrationResult> Solve(IReadOnlyList<CalibrationReading> readings, CalibrationPrior prior)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(prior);
        var faults = Faults(readings).ToList();
        if (faults.Count > 0)
        {
            return FieldResult<CalibrationResult>.Refused(faults);
        }

        var unknowns = Unknowns(readings);
        var design = Matrix<double>.Build.Dense(readings.Count, unknowns.Count, (row, column) => Effect(readings[row], unknowns[column]));
        var differences = Vector<double>.Build.DenseOfEnumerable(readings.Select(reading => reading.Measured - reading.Planned));
        double[] before = [.. unknowns.Select(unknown => prior.Of(unknown.Quantity, unknown.Flash))];
        var possible = CalibrationPlausibility.Possible(readings, design, differences, before);
        if (Array.TrueForAll(possible, isPossible => !isPossible))
        {
            return FieldResult<CalibrationResult>.Refused([.. readings.Select((reading, i) => CalibrationPlausibility.Impossible(reading, differences[i], design.Row(i), before))]);
        }

        var solution = FitWithoutHopeless(readings, design, differences, before, possible);
        var quantities = unknowns.Select((unknown, i) => new CalibratedQuantity(
            unknown.Quantity, unknown.Flash, before[i], solution.Mean[i], Math.Sqrt(solution.Covariance[i, i]))).ToList();
        var result = new CalibrationResult(quantities, Residuals(readings, design, differences, solution, possible), [.. Caveats(quantities)])
        {
            Fit = CalibrationPlausibility.FitOf(readings, before, solution),
            Covariance = [.. solution.Covariance.EnumerateRows().Select(row => (IReadOnlyList<double>)[.. row])],
        };
        return CalibrationPlausibility.Fault(result, possible) is { } fault ? fault : result;
    }

    private static IEnumerable<FieldDiagnostic> Faults(IReadOnlyList<CalibrationReading> readings)
    {
        if (readings.Count == 0)
        {
            yield return new FieldDiagnostic("FLD201", "calibration", "There is no reading to learn from.");
        }

        foreach (var reading in readings)
        {
            if (!double.IsFinite(reading.Planned) || !double.IsFinite(reading.Measured))
            {
                yield return new FieldDiagnostic("FLD202", reading.Name, "The reading or its planned value is not a number.");
            }

            if (!double.IsFinite(reading.Uncertainty) || reading.Uncertainty <= 0)
            {
                yield return new FieldDiagnostic("FLD203", reading.Name, "The reading's uncertainty must be above zero.");
            }
        }
    }

    private static List<(CalibrationQuantity Quantity, string Flash)> Unknowns(IReadOnlyList<CalibrationReading> readings)
    {
        var unknowns = readings.Select(reading => reading.Flash).Distinct(StringComparer.Ordinal)
            .Select(flash => (CalibrationQuantity.FlashLight, flash)).ToList();
        unknowns.Add((CalibrationQuantity.PanelTransmittance, ""));
        unknowns.Add((CalibrationQuantity.CameraClipPoint, ""));
        return unknowns;
    }

    /// <summary>Stops by which a reading changes when a quantity goes up by one [1].</summary>
    internal static double Effect(CalibrationReading reading, (CalibrationQuantity Quantity, string Flash) unknown) => unknown.Quantity switch
    {
        CalibrationQuantity.FlashLight => reading.Flash == unknown.Flash ? 1 : 0,
        CalibrationQuantity.PanelTransmittance => reading.Kind is CalibrationReadingKind.PanelMeter or CalibrationReadingKind.WhiteMargin ? 1 : 0,
        _ => reading.Kind is CalibrationReadingKind.WhiteMargin or CalibrationReadingKind.CardInFrame ? -1 : 0,
    };

    private static CalibrationSolution FitWithoutHopeless(
        IReadOnlyList<CalibrationReading> readings, Matrix<double> design, Vector<double> differences, double[] prior, bool[] possible)
    {
        var (left, many) = (possible.ToArray(), possible.Count(isPossible => isPossible));
        while (true)
        {
            var fitted = Fit(readings, design, differences, prior, left);
            var worst = Enumerable.Range(0, readings.Count).Where(i => left[i])
                .MaxBy(i => Math.Abs(fitted.Left[i]) / Expected(readings[i], design.Row(i), fitted, fitted.Weights[i]));
            if (Math.Abs(fitted.Left[worst]) <= CalibrationPlausibility.Hopeless * Expected(readings[worst], design.Row(worst), fitted, fitted.Weights[worst])
                || left.Count(taking => taking) <= (many / 2) + 1)
            {
                return fitted;
            }

            left[worst] = false;
        }
    }

    private static CalibrationSolution Fit(
        IReadOnlyList<CalibrationReading> readings, Matrix<double> design, Vector<double> differences, double[] prior, bool[] takesPart)
    {
        var weights = takesPart.Select(taking => taking ? 1.0 : 0.0).ToArray();
        var (mean, covariance) = Posterior(readings, design, differences, prior, weights);
        for (var round = 0; round < Rounds; round++)
        {
            var left = differences - (design * mean);
            var next = left.Select((r, i) =>
                takesPart[i] ? Math.Min(1, Doubtful * readings[i].Uncertainty / Math.Max(Math.Abs(r), double.Epsilon)) : 0).ToArray();
            var settled = next.Zip(weights, (a, b) => Math.Abs(a - b)).Max() < 1e-9;
            weights = next;
            (mean, covariance) = Posterior(readings, design, differences, prior, weights);
            if (settled)
            {
                break;
            }
        }

        return new CalibrationSolution(mean, covariance, weights, differences - (design * mean));
    }

    private static (Vector<double> Mean, Matrix<double> Covariance) Posterior(
        IReadOnlyList<CalibrationReading> readings, Matrix<double> design, Vector<double> differences, double[] prior, double[] weights)
    {
        var precision = Matrix<double>.Build.DenseOfDiagonalArray([.. readings.Select((reading, i) => weights[i] / Math.Pow(reading.Uncertainty, 2))]);
        var before = Matrix<double>.Build.DenseOfDiagonalArray([.. prior.Select(sigma => 1 / (sigma * sigma))]);
        var covariance = ((design.Transpose() * precision * design) + before).Inverse();
        return (covariance * design.Transpose() * precision * differences, covariance);
    }

    private static List<CalibrationResidual> Residuals(
        IReadOnlyList<CalibrationReading> readings, Matrix<double> design, Vector<double> differences, CalibrationSolution fitted, bool[] possible) =>
    [
        .. readings.Select((reading, i) => new CalibrationResidual(
            reading,
            differences[i],
            fitted.Left[i],
            fitted.Weights[i],
            !possible[i] || Math.Abs(fitted.Left[i]) > Disagreement * Expected(reading, design.Row(i), fitted, fitted.Weights[i]))
        {
            IsImpossible = !possible[i],
        }),
    ];

    // A reading that took part has pulled the fit towards itself, so its residual should be smaller than its uncertainty; one that did not is
    // judged by its own uncertainty and the fit's together.
    private static double Expected(CalibrationReading reading, Vector<double> effect, CalibrationSolution fitted, double weight)
    {
        var (variance, fit) = (reading.Uncertainty * reading.Uncertainty, effect * fitted.Covariance * effect);
        return Math.Sqrt(weight == 0 ? variance + fit : Math.Max(variance - (weight * fit), 0.05 * variance));
    }

    private static IEnumerable<string> Caveats(List<CalibratedQuantity> quantities)
    {
        foreach (var quantity in quantities.Where(quantity => quantity.UncertaintyStops > 0.8 * quantity.PriorStops))
        {
            yield return $"The readings say little about {quantity.Name}: it stays nearly as uncertain as before.";
        }

        foreach (var quantity in quantities.Where(quantity => Math.Abs(quantity.CorrectionStops) > 2 * quantity.PriorStops))
        {
            yield return $"The correction of {quantity.Name} is larger than the kit's figure should ever be wrong: check how it was set up.";
        }
    }
}
