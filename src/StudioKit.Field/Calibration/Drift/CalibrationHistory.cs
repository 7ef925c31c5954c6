using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>Several outings held together: how each flash, the sheet and the clip point drift.</summary>
/// <param name="Outings">Days with how many of their readings had a say, by day.</param>
/// <param name="Drifts">Every quantity that any outing says something of.</param>
/// <param name="Pooled">All readings taken as one outing, where they agree as such and nothing drifts; else the last outing that does; none where none does.</param>
/// <param name="LeftOut">Outings or readings that were left out, and why.</param>
/// <remarks>
/// Each outing is calibrated by itself, and the kit's own figures are taken out of it again: 1/σ² = 1/σ₁² − 1/σ₀² with σ₀ before and σ₁ after, and
/// x = σ²·x₁/σ₁². So what is held together is what the outings say, and not how far the kit was believed.
/// </remarks>
public sealed record CalibrationHistory(
    IReadOnlyList<(DateOnly Day, int Used, int All)> Outings, IReadOnlyList<QuantityDrift> Drifts, CalibrationResult? Pooled, IReadOnlyList<FieldDiagnostic> LeftOut)
{
    internal const double DaysOfYear = 365.25;

    /// <summary>
    /// The readings that today's figures are known from: those of <see cref="Pooled"/>, and where outings differ from each other without drifting along a line, so that they do not agree as one, those of each.
    /// </summary>
    public IReadOnlyList<UsedReading> Used { get; init; } = [];

    /// <summary>What the margin over a flash differs by from outing to outing; nothing where it does not by more than its readings explain, drifts along a line, or three outings do not tell.</summary>
    /// <param name="flash">Name of the flash.</param>
    public OutingDifference Between(string flash)
    {
        var (light, margin) = (Of(DriftingKind.FlashLight), Of(DriftingKind.WhiteMargin));
        return (margin ?? light) is { } scatter ? new OutingDifference(scatter.Stops, light is not null) : OutingDifference.None;

        OutingScatter? Of(DriftingKind kind) => Drifts.FirstOrDefault(drift => drift.Kind == kind && drift.Flash == flash) is { IsSignificant: false, Scatter: { IsSignificant: true } of } ? of : null;
    }

    // An outing tells a quantity apart from the others where it alone leaves less doubt than the kit's figure; else it is their sum that it tells.
    private const double ToldApart = 0.75;

    /// <summary>Holds outings together.</summary>
    /// <param name="readings">Readings of one kit with their days.</param>
    /// <param name="prior">How far the kit's figures may be wrong.</param>
    [Source("Gelman2013", "normal data: the prior taken out of the posterior leaves the likelihood")]
    [Source("NistHandbook", "section 4.4.3.2, weighted least squares")]
    public static CalibrationHistory Of(IReadOnlyList<DatedReading> readings, CalibrationPrior prior)
    {
        ArgumentNullException.ThrowIfNull(readings);
        ArgumentNullException.ThrowIfNull(prior);
        var outings = readings.GroupBy(reading => reading.Day).OrderBy(outing => outing.Key)
            .Select(outing => (Day: outing.Key, All: outing.Count(), Solved: KitCalibration.Solve([.. outing.Select(reading => reading.Reading)], prior))).ToList();
        var solved = outings.Where(outing => outing.Solved.IsSound).Select(outing => (outing.Day, Result: outing.Solved.Value!)).ToList();
        ValueList<QuantityDrift> drifts = [.. Quantities(solved).Select(quantity => Drift(quantity.Kind, quantity.Flash, solved, prior)).Where(drift => drift.Outings.Count > 0)];
        var one = AsOne(readings, prior, drifts);
        return new CalibrationHistory(
            [.. outings.Select(outing => (outing.Day, outing.Solved.Value?.Fit.Readings ?? 0, outing.All))],
            drifts,
            one ?? solved.Select(outing => outing.Result).LastOrDefault(),
            [
                .. outings.SelectMany(outing => outing.Solved.Diagnostics.Select(fault => fault with { Subject = FormattableString.Invariant($"{outing.Day:yyyy-MM-dd}, {fault.Subject}") })),
                .. solved.SelectMany(outing => outing.Result.Residuals.Where(residual => !residual.IsUsed).Select(residual => LeftOutOf(outing.Day, residual))),
            ])
        {
            Used = one is not null ? [.. Behind(readings, one)] : [.. solved.Skip(drifts.Any(drift => drift.IsSignificant) ? solved.Count - 1 : 0).SelectMany(outing => Behind(readings.Where(reading => reading.Day == outing.Day), outing.Result))],
        };
    }

    // What drifts is not known better for having been read long ago.
    private static CalibrationResult? AsOne(IReadOnlyList<DatedReading> readings, CalibrationPrior prior, IReadOnlyList<QuantityDrift> drifts) => drifts.Any(drift => drift.IsSignificant)
        ? null
        : KitCalibration.Solve([.. readings.Select(reading => reading.Reading)], prior).Value;

    private static IEnumerable<UsedReading> Behind(IEnumerable<DatedReading> readings, CalibrationResult result) =>
        readings.Zip(result.Residuals, (dated, residual) => new UsedReading(dated.Day, dated.Reading, residual.Weight)).Where(used => used.Weight > 0);

    private static FieldDiagnostic LeftOutOf(DateOnly day, CalibrationResidual residual) => new(
        "FLD223",
        FormattableString.Invariant($"{day:yyyy-MM-dd}, {residual.Reading.Name}"),
        residual.IsImpossible
            ? FormattableString.Invariant($"It lies {residual.Before:+0.0;-0.0} stops from the plan, more than the kit's figures can be wrong by.")
            : FormattableString.Invariant($"It lies {residual.After:+0.0;-0.0} stops from what the other readings of the day say."));

    private static IEnumerable<(DriftingKind Kind, string Flash)> Quantities(List<(DateOnly Day, CalibrationResult Result)> outings)
    {
        var flashes = outings.SelectMany(outing => outing.Result.Quantities).Where(quantity => quantity.Flash.Length > 0).Select(quantity => quantity.Flash).Distinct(StringComparer.Ordinal).ToList();
        var below = outings.SelectMany(outing => outing.Result.Residuals).Where(residual => residual.Reading.Kind == CalibrationReadingKind.WhiteMargin)
            .Select(residual => residual.Reading.Flash).Distinct(StringComparer.Ordinal);
        return [.. flashes.Select(flash => (DriftingKind.FlashLight, flash)), (DriftingKind.PanelTransmittance, ""), (DriftingKind.CameraClipPoint, ""), .. below.Select(flash => (DriftingKind.WhiteMargin, flash))];
    }

    private static QuantityDrift Drift(DriftingKind kind, string flash, List<(DateOnly Day, CalibrationResult Result)> outings, CalibrationPrior prior)
    {
        var told = outings.Select(outing => Alone(outing.Day, outing.Result, kind, flash, prior)).OfType<OutingEstimate>().ToList();
        var points = told.ConvertAll(outing => (
            (outing.Day.DayNumber - told[0].Day.DayNumber) / DaysOfYear, outing.Stops, 1 / (outing.UncertaintyStops * outing.UncertaintyStops)));
        return new QuantityDrift(kind, flash, told, points.Count < WeightedLine.FewestPoints ? null : WeightedLine.Through(points));
    }

    private static OutingEstimate? Alone(DateOnly day, CalibrationResult result, DriftingKind kind, string flash, CalibrationPrior prior)
    {
        if (flash.Length > 0 && !result.Quantities.Any(quantity => quantity.Flash == flash))
        {
            return null;
        }

        var shares = result.Quantities.Select(quantity => Share(quantity, kind, flash)).ToList();
        var (mean, before, after) = (0.0, 0.0, 0.0);
        for (var i = 0; i < shares.Count; i++)
        {
            var quantity = result.Quantities[i];
            mean += shares[i] * quantity.CorrectionStops;
            before += Math.Pow(shares[i] * prior.Of(quantity.Quantity, quantity.Flash), 2);
            after += shares.Select((share, j) => share * shares[i] * result.Covariance[i][j]).Sum();
        }

        var gained = (1 / after) - (1 / before);
        return gained * before * ToldApart * ToldApart < 1 ? null : new OutingEstimate(day, mean / after / gained, 1 / Math.Sqrt(gained));
    }

    private static double Share(CalibratedQuantity quantity, DriftingKind kind, string flash) => (kind, quantity.Quantity) switch
    {
        (DriftingKind.FlashLight or DriftingKind.WhiteMargin, CalibrationQuantity.FlashLight) => quantity.Flash == flash ? 1 : 0,
        (DriftingKind.PanelTransmittance or DriftingKind.WhiteMargin, CalibrationQuantity.PanelTransmittance) => 1,
        (DriftingKind.CameraClipPoint, CalibrationQuantity.CameraClipPoint) => 1,
        (DriftingKind.WhiteMargin, CalibrationQuantity.CameraClipPoint) => -1,
        _ => 0,
    };
}
