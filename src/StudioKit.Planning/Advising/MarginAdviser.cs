using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Expected;

namespace StudioKit.Planning.Advising;

/// <summary>Works out what brings the darkest visible place to one margin, neither under nor over it, by planning the state that a test frame shows.</summary>
internal sealed class MarginAdviser(Replanner replanner, ExposurePlan now)
{
    private const double Same = 1e-6;
    private const double Third = 1.0 / 3;

    /// <summary>What the frame shows; none where it shows nothing, being white all over.</summary>
    public MeasuredLight? Measured(TestedFrame frame) => SeenFrame.Of(replanner, now, frame) is { Gives: { } gives } seen
        ? new MeasuredLight(gives, seen.MarginAt(new ShotSettings(seen.Below.Power, null, now.Aperture, now.Iso)), seen.IsSetOtherwise)
        : null;

    /// <summary>What brings it to a margin.</summary>
    public MarginAdvice To(TestedFrame frame, Stops margin)
    {
        if (SeenFrame.Of(replanner, now, frame) is not { Gives: { } gives, IsSetOtherwise: false } seen)
        {
            return new MarginAdvice(null, []);
        }

        var (given, click) = (seen.Given(replanner, gives), seen.Below.DialStep.Value);
        var aimed = new KitChange.TargetMargin(now.SetUp, new Stops(Math.Max(0, margin.Value - (click / 2))));
        var state = replanner.With([.. given, aimed]);
        var found = ByDial(state, margin, click) ?? ByHand(state, margin, click);
        return found is not null
            ? new MarginAdvice(new Advice([.. given, aimed, .. found.Changes], seen.Seen(found.Promise)), [])
            : new MarginAdvice(null, state.Plan(now, [])?.Verdict.Missed ?? []);
    }

    // A plan takes the click that is not darker than its aim, so half a click under the margin it takes the nearest. A dial of wider clicks than the ISO
    // speed's comes nearer with another speed.
    private Advice? ByDial(Replanner state, Stops margin, double click) => Nearest(
        (click > Third + Same ? (double[])[0, Third, -Third] : [0])
            .Select(stops => stops == 0 ? (ValueList<KitChange>)[] : [new KitChange.Iso(now.SetUp, new IsoSpeed(now.Iso.Value * new Stops(stops).Ratio))])
            .Select(changes => state.Plan(now, changes) is { } planned ? new Advice(changes, planned) : null).OfType<Advice>(),
        margin,
        click);

    private Advice? ByHand(Replanner state, Stops margin, double click) =>
        state.Plan(now, []) is { } here && here.Verdict.Verdict != Verdict.Works ? Nearest(new MendingLadders(state, here).Cheapest(), margin, click) : null;

    // The first that comes nearest by a sixth of a stop and more, for a smaller step nobody turns another dial.
    private static Advice? Nearest(IEnumerable<Advice> tried, Stops margin, double click) => tried
        .Where(piece => FrameAdviser.IsRight(piece.Promise) && OffBy(piece, margin) <= (click / 2) + Same)
        .MinBy(piece => Math.Max(Third / 2, OffBy(piece, margin)));

    private static double OffBy(Advice piece, Stops margin) => Math.Abs(piece.Promise.WhiteMargin!.Value.Value - margin.Value);
}
