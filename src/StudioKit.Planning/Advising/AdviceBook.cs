using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Standing;

namespace StudioKit.Planning.Advising;

/// <summary>The advice of a plan, worked out for a card when somebody asks for it.</summary>
public sealed class AdviceBook
{
    private readonly Replanner? _replanner;
    private readonly IReadOnlyList<ExposurePlan> _exposures;
    private readonly Lazy<StandSearch>? _stands;
    private readonly Dictionary<(string SetUp, string Framing), CardAdvice> _kept = [];
    private readonly Dictionary<(string SetUp, string Framing), IReadOnlyList<Advice>> _mending = [];

    internal AdviceBook(Replanner replanner, IReadOnlyList<ExposurePlan> exposures) =>
        (_replanner, _exposures, _stands) = (replanner, exposures, new(() => replanner.Stands(exposures)));

    /// <summary>Advice written by hand; none for a card that is not in it.</summary>
    /// <param name="cards">Cards by set-up and framing.</param>
    public AdviceBook(IReadOnlyDictionary<(string SetUp, string Framing), CardAdvice> cards)
    {
        _exposures = [];
        _kept = new(cards);
    }

    /// <summary>The advice for an exposure of the plan.</summary>
    /// <param name="exposure">The exposure.</param>
    public CardAdvice Of(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        lock (_kept)
        {
            var card = (exposure.SetUp, exposure.Framing.Name);
            if (!_kept.TryGetValue(card, out var advice))
            {
                advice = _replanner is null ? CardAdvice.None : new CardAdviser(_replanner, exposure, _exposures, _stands!).Advise();
                _kept.Add(card, advice);
            }

            return advice;
        }
    }

    /// <summary>What helps against one symptom, without the rest of the exposure's advice; none where the card has no advice against it.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <param name="seen">The symptom.</param>
    public SymptomAdvice? Against(ExposurePlan exposure, Symptom seen) =>
        PartOf(exposure, card => card.Symptoms.FirstOrDefault(symptom => symptom.Seen == seen), adviser => adviser.Against(seen));

    /// <summary>What to set when the light of the place changes, without the rest of the exposure's advice.</summary>
    /// <param name="exposure">The exposure.</param>
    /// <returns>From brightest to darkest; empty where the exposure does not work.</returns>
    public IReadOnlyList<LightStep> WhenLightChanges(ExposurePlan exposure) => PartOf<IReadOnlyList<LightStep>>(exposure, card => card.WhenLightChanges, adviser => adviser.WhenLightChanges());

    /// <summary>What to turn after a test frame of a white background.</summary>
    /// <param name="exposure">The exposure that it was a test of.</param>
    /// <param name="frame">What it showed.</param>
    /// <returns>What it says and what to turn; none where the exposure has no flash below, or the plan finds no light there.</returns>
    public FrameAdvice? AfterFrame(ExposurePlan exposure, TestedFrame frame)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        ArgumentNullException.ThrowIfNull(frame);
        lock (_kept)
        {
            return _replanner is null ? null : new FrameAdviser(_replanner, exposure).After(frame);
        }
    }

    /// <summary>What a test frame of a white background shows of the light, before anything is turned.</summary>
    /// <param name="exposure">The exposure that it was a test of.</param>
    /// <param name="frame">What it showed.</param>
    /// <returns>What it shows; none where it is white all over, the exposure has no flash below, or the plan finds no light there.</returns>
    public MeasuredLight? Measured(ExposurePlan exposure, TestedFrame frame)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        ArgumentNullException.ThrowIfNull(frame);
        lock (_kept)
        {
            return _replanner is null ? null : new MarginAdviser(_replanner, exposure).Measured(frame);
        }
    }

    /// <summary>What brings the darkest visible place to one margin, as near as the flash's dial goes, with the light that a test frame shows.</summary>
    /// <param name="exposure">The exposure that it was a test of.</param>
    /// <param name="frame">What it showed.</param>
    /// <param name="margin">The margin; 0 stops or more.</param>
    public MarginAdvice ToMargin(ExposurePlan exposure, TestedFrame frame, Stops margin)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        ArgumentNullException.ThrowIfNull(frame);
        Guard.NonNegative(margin.Value, nameof(margin));
        lock (_kept)
        {
            return _replanner is null ? new MarginAdvice(null, []) : new MarginAdviser(_replanner, exposure).To(frame, margin);
        }
    }

    /// <summary>Changes that make an exposure work, without the rest of its advice.</summary>
    /// <param name="exposure">The exposure.</param>
    public IReadOnlyList<Advice> Mending(ExposurePlan exposure)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        lock (_kept)
        {
            // Asked for by the check, by its keys, and by whoever looks for what mends it.
            var card = (exposure.SetUp, exposure.Framing.Name);
            if (!_mending.TryGetValue(card, out var mending))
            {
                mending = PartOf<IReadOnlyList<Advice>>(exposure, found => found.Mending, adviser => adviser.Mending());
                _mending.Add(card, mending);
            }

            return mending;
        }
    }

    // Read from the card where it has been worked out; else no more is worked out than is asked for.
    private TPart PartOf<TPart>(ExposurePlan exposure, Func<CardAdvice, TPart> read, Func<CardAdviser, TPart> work)
    {
        ArgumentNullException.ThrowIfNull(exposure);
        lock (_kept)
        {
            return _kept.TryGetValue((exposure.SetUp, exposure.Framing.Name), out var card) ? read(card)
                : _replanner is null ? read(CardAdvice.None)
                : work(new CardAdviser(_replanner, exposure, _exposures, _stands!));
        }
    }
}
