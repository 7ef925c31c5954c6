using System.Globalization;
using MathNet.Numerics.LinearAlgebra;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>What is known of the figures behind a card's white margin after the readings of a season, as one normal distribution.</summary>
/// <remarks>
/// Beside the kit's figures it holds the error of each instrument, which comes again in all that the instrument reads: so a reading that is repeated
/// does not become as sure as one would think, while two readings whose difference counts lose it. What outings differ by, where they do, is an unknown of each.
/// </remarks>
internal sealed class SeasonModel
{
    // Of a reading's variance some two thirds are the instrument's own, as of a meter that is calibrated to a tenth of a stop and repeats to a twentieth (common practice, no source).
    private const double Instrument = 0.8;

    private readonly List<(SeasonUnknown Kind, string Name)> _unknowns;
    private readonly LitCards _cards;
    private readonly OutingDifference _between;

    /// <param name="cards">Cards whose margin counts.</param>
    /// <param name="prior">How far the kit's figures may be wrong.</param>
    /// <param name="flashes">Names of the flashes.</param>
    /// <param name="modifiers">Names of what may stand before them.</param>
    /// <param name="known">Readings so far.</param>
    /// <param name="between">What the margin differs by from outing to outing.</param>
    public SeasonModel(LitCards cards, CalibrationPrior prior, IEnumerable<string> flashes, IEnumerable<string> modifiers, IReadOnlyList<UsedReading> known, OutingDifference between)
    {
        (_cards, _between) = (cards, between);
        _unknowns =
        [
            .. flashes.Union(known.Select(used => used.Reading.Flash)).Append(cards.Flash).Distinct(StringComparer.Ordinal).Select(flash => (SeasonUnknown.FlashLight, flash)),
            .. modifiers.Union(known.Select(used => used.Reading.Modifier)).Append(cards.Modifier).Where(modifier => modifier.Length > 0).Distinct(StringComparer.Ordinal).Select(modifier => (SeasonUnknown.ModifierLoss, modifier)),
            (SeasonUnknown.PanelTransmittance, ""), (SeasonUnknown.CameraClipPoint, ""), (SeasonUnknown.Meter, ""), (SeasonUnknown.Picture, ""),
            .. between.Stops > 0 ? known.Select(used => Day(used.Day)).Distinct(StringComparer.Ordinal).Append("").Select(day => (SeasonUnknown.Outing, day)) : [],
        ];
        Margin = Vector<double>.Build.DenseOfEnumerable(_unknowns.Select(Share));
        Covariance = known.Aggregate(
            Matrix<double>.Build.DenseOfDiagonalArray([.. _unknowns.Select(unknown => Math.Pow(PriorOf(unknown, prior), 2))]),
            (covariance, used) => LinearGaussian.After(covariance, Effect(used.Reading, Day(used.Day)), OwnVariance(used.Reading) / used.Weight));
    }

    /// <summary>Covariance of the unknowns.</summary>
    public Matrix<double> Covariance { get; }

    /// <summary>Share of each unknown in the margin of the cards at the next outing.</summary>
    public Vector<double> Margin { get; }

    /// <summary>Share of each unknown in a reading of the next outing.</summary>
    public Vector<double> Effect(CalibrationReading reading) => Effect(reading, "");

    /// <summary>Variance of what a reading does not share with another of the same instrument.</summary>
    [Source("CommonPractice", "of a reading's variance some two thirds are the instrument's own")]
    public static double OwnVariance(CalibrationReading reading) => (1 - (Instrument * Instrument)) * reading.Uncertainty * reading.Uncertainty;

    private Vector<double> Effect(CalibrationReading reading, string day) => Vector<double>.Build.DenseOfEnumerable(_unknowns.Select(unknown => unknown.Kind switch
    {
        SeasonUnknown.FlashLight => KitCalibration.Effect(reading, (CalibrationQuantity.FlashLight, unknown.Name)),
        SeasonUnknown.ModifierLoss => reading.Modifier == unknown.Name ? -1 : 0,
        SeasonUnknown.PanelTransmittance => KitCalibration.Effect(reading, (CalibrationQuantity.PanelTransmittance, "")),
        SeasonUnknown.CameraClipPoint => KitCalibration.Effect(reading, (CalibrationQuantity.CameraClipPoint, "")),
        SeasonUnknown.Meter => IsMetered(reading) ? Instrument * reading.Uncertainty : 0,
        SeasonUnknown.Picture => IsMetered(reading) ? 0 : Instrument * reading.Uncertainty,
        _ => reading.Flash == _cards.Flash && unknown.Name == day && (_between.IsOfFlash || IsOfSheet(reading)) ? 1 : 0,
    }));

    private double Share((SeasonUnknown Kind, string Name) unknown) => unknown.Kind switch
    {
        SeasonUnknown.FlashLight => unknown.Name == _cards.Flash ? 1 : 0,
        SeasonUnknown.ModifierLoss => unknown.Name == _cards.Modifier ? -1 : 0,
        SeasonUnknown.PanelTransmittance => 1,
        SeasonUnknown.CameraClipPoint => -1,
        SeasonUnknown.Outing => unknown.Name.Length == 0 ? 1 : 0,
        _ => 0,
    };

    private double PriorOf((SeasonUnknown Kind, string Name) unknown, CalibrationPrior prior) => unknown.Kind switch
    {
        SeasonUnknown.FlashLight => prior.Of(CalibrationQuantity.FlashLight, unknown.Name),
        SeasonUnknown.ModifierLoss => prior.Modifiers.TryGetValue(unknown.Name, out var known) ? known : prior.ModifierLoss,
        SeasonUnknown.PanelTransmittance => prior.PanelTransmittance,
        SeasonUnknown.CameraClipPoint => prior.CameraClipPoint,
        SeasonUnknown.Outing => _between.Stops,
        _ => 1,
    };

    private static bool IsMetered(CalibrationReading reading) => reading.Kind is CalibrationReadingKind.FlashMeter or CalibrationReadingKind.PanelMeter;

    private static bool IsOfSheet(CalibrationReading reading) => reading.Kind is CalibrationReadingKind.PanelMeter or CalibrationReadingKind.WhiteMargin;

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
