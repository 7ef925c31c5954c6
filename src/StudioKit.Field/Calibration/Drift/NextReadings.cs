using MathNet.Numerics.LinearAlgebra;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>Which single reading would make a card's white margin surest.</summary>
/// <remarks>
/// The margin over a flash is its light, plus the panel, less the clip point: c·x with variance cᵀΣc. A reading a·x ± σ takes (cᵀΣa)²/(aᵀΣa + σ²)
/// from it, whatever it will say.
/// </remarks>
public static class NextReadings
{
    /// <summary>All readings that the kit allows, the one that tells most first.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="flash">Flash below whose cards count.</param>
    /// <param name="prior">How far the kit's figures may be wrong.</param>
    /// <param name="known">What readings have told so far; none where there are none.</param>
    [Source("Gelman2013", "normal linear model: posterior variance given one observation more")]
    public static IReadOnlyList<CandidateReading> Of(KitSpec kit, string flash, CalibrationPrior prior, CalibrationResult? known)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(prior);
        var quantities = kit.Flashes.Select(spec => (Quantity: CalibrationQuantity.FlashLight, Flash: spec.Name))
            .Append((CalibrationQuantity.PanelTransmittance, "")).Append((CalibrationQuantity.CameraClipPoint, "")).ToList();
        var covariance = Covariance(quantities, prior, known);
        var margin = Effect(quantities, new CalibrationReading("", CalibrationReadingKind.WhiteMargin, flash, 0, 0, 1));
        var before = margin * covariance * margin;
        return
        [
            .. Kinds(kit).Select(reading =>
            {
                var (effect, sigma) = (Effect(quantities, reading), reading.Uncertainty);
                var taken = Math.Pow(margin * covariance * effect, 2) / ((effect * covariance * effect) + (sigma * sigma));
                return new CandidateReading(reading.Kind, reading.Flash, sigma, Math.Sqrt(before), Math.Sqrt(Math.Max(0, before - taken)));
            }).OrderBy(candidate => candidate.After).ThenBy(candidate => candidate.Kind),
        ];
    }

    // A meter goes before every flash; the sheet and a card are lit by those that stand so.
    private static IEnumerable<CalibrationReading> Kinds(KitSpec kit)
    {
        foreach (var flash in kit.Flashes.Select(flash => flash.Name))
        {
            var roles = kit.SetUps.SelectMany(setUp => setUp.Lights).Where(light => light.Flash == flash).Select(light => light.Role).ToList();
            yield return Reading(CalibrationReadingKind.FlashMeter, flash);
            if (roles.Contains(LightRole.Below))
            {
                yield return Reading(CalibrationReadingKind.PanelMeter, flash);
            }

            if (roles.Exists(role => role.IsBackground()))
            {
                yield return Reading(CalibrationReadingKind.WhiteMargin, flash);
            }

            if (roles.Exists(role => !role.IsBackground()))
            {
                yield return Reading(CalibrationReadingKind.CardInFrame, flash);
            }
        }
    }

    private static CalibrationReading Reading(CalibrationReadingKind kind, string flash) => new("", kind, flash, 0, 0, FieldReadingTable.UsualUncertainty(kind));

    private static Vector<double> Effect(List<(CalibrationQuantity Quantity, string Flash)> quantities, CalibrationReading reading) =>
        Vector<double>.Build.DenseOfEnumerable(quantities.Select(quantity => KitCalibration.Effect(reading, quantity)));

    // What was never read is as the kit has it.
    private static Matrix<double> Covariance(List<(CalibrationQuantity Quantity, string Flash)> quantities, CalibrationPrior prior, CalibrationResult? known)
    {
        var place = quantities.ConvertAll(quantity => known?.Quantities.ToList().FindIndex(found => found.Quantity == quantity.Quantity && found.Flash == quantity.Flash) ?? -1);
        return Matrix<double>.Build.Dense(quantities.Count, quantities.Count, (row, column) =>
            place[row] >= 0 && place[column] >= 0 ? known!.Covariance[place[row]][place[column]]
            : row == column ? Math.Pow(prior.Of(quantities[row].Quantity, quantities[row].Flash), 2)
            : 0);
    }
}
