using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>Which reading would make a card's white margin surest.</summary>
/// <remarks>
/// The margin is the flash's light, less what stands before it takes, plus the panel, less the clip point: c·x with variance cᵀΣc. A reading a·x ± σ takes
/// (cᵀΣa)²/(aᵀΣa + σ²) from it, whatever it will say.
/// </remarks>
public static class NextReadings
{
    /// <summary>How sure the margin is to be where nobody says otherwise, in stops [1]: half of what flashes and cameras are set by.</summary>
    public const double UsualReach = 1.0 / 6;

    // Rungs from half a stop under clipping leave 0.04, the curve that they show 0.06 and a flash that repeats to a twentieth 0.05 (common practice, no source).
    private const double LadderUncertainty = 0.09;
    private const int FewestRungs = 3;

    /// <summary>All readings that the kit allows, the one that tells most first.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="cards">Cards whose margin counts.</param>
    /// <param name="prior">How far the kit's figures may be wrong.</param>
    /// <param name="known">Readings so far.</param>
    /// <param name="between">What the margin differs by from outing to outing.</param>
    /// <param name="reach">How sure the margin is to be, as a standard uncertainty in stops [1]; &gt; 0.</param>
    [Source("Gelman2013", "normal linear model: posterior variance given one observation more")]
    public static IReadOnlyList<CandidateReading> Of(KitSpec kit, LitCards cards, CalibrationPrior prior, IReadOnlyList<UsedReading> known, OutingDifference between, double reach)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(cards);
        ArgumentNullException.ThrowIfNull(prior);
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(between);
        var model = new SeasonModel(cards, prior, kit.Flashes.Select(flash => flash.Name), kit.SetUps.SelectMany(setUp => setUp.Lights).Select(light => light.Modifier ?? ""), known, between);
        return [.. Possible(kit).Select(possible => Judged(possible, model, known, reach)).OrderBy(candidate => candidate.After).ThenBy(candidate => candidate.Kind)];
    }

    private static CandidateReading Judged(Candidate possible, SeasonModel model, IReadOnlyList<UsedReading> known, double reach)
    {
        var (reading, margin, covariance) = (possible.Reading, model.Margin, model.Covariance);
        var (effect, own) = (model.Effect(reading), SeasonModel.OwnVariance(reading));
        return new CandidateReading(
            reading.Kind, reading.Flash, reading.Uncertainty, Math.Sqrt(margin * covariance * margin), Math.Sqrt(LinearGaussian.Left(margin, covariance, effect, own)))
        {
            Modifier = reading.Modifier,
            SetUp = possible.SetUp,
            IsLadder = possible.IsLadder,
            Taken = Taken(possible, known),
            Least = Math.Sqrt(LinearGaussian.Left(margin, covariance, effect, 0)),
            Repeats = LinearGaussian.Repeats(margin, covariance, effect, own, reach * reach),
        };
    }

    // A ladder is several frames of one outing.
    private static int Taken(Candidate possible, IReadOnlyList<UsedReading> known)
    {
        var alike = known.Where(used => used.Reading.Kind == possible.Reading.Kind && used.Reading.Flash == possible.Reading.Flash && used.Reading.Modifier == possible.Reading.Modifier);
        return possible.IsLadder ? alike.GroupBy(used => used.Day).Count(day => day.Count() >= FewestRungs) : alike.Count();
    }

    // A meter goes before every flash as it stands in each set-up; the sheet and a card are lit by those that stand so.
    private static IEnumerable<Candidate> Possible(KitSpec kit) => kit.SetUps
        .SelectMany(setUp => setUp.Lights.SelectMany(light => Kinds(light).Select(kind => Reading(kind.Kind, light.Flash, light.Modifier ?? "", setUp.Name, kind.IsLadder))))
        .Concat(kit.Flashes.Where(flash => !kit.SetUps.SelectMany(setUp => setUp.Lights).Any(light => light.Flash == flash.Name)).Select(flash => Reading(CalibrationReadingKind.FlashMeter, flash.Name, "", "", false)))
        .DistinctBy(candidate => (candidate.Reading, candidate.IsLadder));

    private static IEnumerable<(CalibrationReadingKind Kind, bool IsLadder)> Kinds(LightSpec light)
    {
        yield return (CalibrationReadingKind.FlashMeter, false);
        if (light.Role == LightRole.Below)
        {
            yield return (CalibrationReadingKind.PanelMeter, false);
        }

        if (!light.Role.IsBackground())
        {
            yield return (CalibrationReadingKind.CardInFrame, false);
            yield break;
        }

        yield return (CalibrationReadingKind.WhiteMargin, false);
        yield return (CalibrationReadingKind.WhiteMargin, true);
    }

    private static Candidate Reading(CalibrationReadingKind kind, string flash, string modifier, string setUp, bool isLadder) => new(
        new CalibrationReading("", kind, flash, 0, 0, isLadder ? LadderUncertainty : FieldReadingTable.UsualUncertainty(kind)) { Modifier = modifier }, setUp, isLadder);

    private sealed record Candidate(CalibrationReading Reading, string SetUp, bool IsLadder);
}
