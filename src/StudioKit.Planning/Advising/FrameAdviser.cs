using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>Works out what to turn after a test frame: the flash below the panel, or behind an upright sheet, is taken to give what the frame shows, and that state is planned.</summary>
internal sealed class FrameAdviser(Replanner replanner, ExposurePlan now)
{
    private const double Same = 1e-6;

    // Sixteen times the light is no error of a kit's figures: something was set otherwise.
    private const double MostOff = 4;

    // Noise and the grain of a map make so much of a difference (common practice, no source).
    private const double AsEven = 0.15;

    /// <summary>What the frame says.</summary>
    public FrameAdvice? After(TestedFrame frame)
    {
        if (now.Lights.FirstOrDefault(light => light.Role.IsBackground()) is not { } below)
        {
            return null;
        }

        ValueList<KitChange> placed = [.. Placed(frame, below)];
        if (replanner.Plan(now, placed) is not { WhiteMargin: { } planned, BrightestMargin: { } brightest } there)
        {
            return null;
        }

        var shift = Shift(there, frame.Shot);
        var (expected, lessEven) = (planned + shift + frame.ViewAboveDarkest, LessEven(frame, brightest - planned));
        var gives = frame.Darkest is { } darkest ? darkest - expected : (Stops?)null;
        var shot = AsShot(there, frame.Shot, planned + shift + (gives ?? default), brightest - planned + lessEven);
        var isOff = gives is { } off && Math.Abs(off.Value) > MostOff;
        return new FrameAdvice(shot, expected, gives is { } light && !isOff ? [.. Pieces(below, light, placed, shot, lessEven)] : [])
        {
            Gives = gives,
            LessEven = lessEven,
            IsSetOtherwise = isOff,
        };
    }

    // Whatever makes it so is not known, and is taken to stay as it is: a lens that darkens its corners, a flash that stands beside the middle.
    private static Stops LessEven(TestedFrame frame, Stops planned) =>
        frame.Spread is { } seen && seen.Value > planned.Value + AsEven ? seen - planned : default;

    private IEnumerable<KitChange> Placed(TestedFrame frame, LightPlan below)
    {
        if (frame.Target is { } target)
        {
            yield return new KitChange.TargetMargin(now.SetUp, target);
        }

        if (frame.Shot.Distance is { } distance && Math.Abs((distance - below.Distance).Millimeters) > 1)
        {
            yield return new KitChange.Move(now.SetUp, below.Place, distance);
        }
    }

    // Stops by which what was set gives the sensor more than what is planned.
    private static Stops Shift(ExposurePlan planned, ShotSettings shot)
    {
        var power = shot.Power.Fraction / planned.Lights.First(light => light.Role.IsBackground()).Power.Fraction;
        var speed = (shot.Iso ?? planned.Iso).Value / planned.Iso.Value;
        var opening = (shot.Aperture ?? planned.Aperture).Value / planned.Aperture.Value;
        return new Stops(Math.Log2(power * speed / (opening * opening)));
    }

    private static ExposurePlan AsShot(ExposurePlan planned, ShotSettings shot, Stops darkest, Stops spread) => planned with
    {
        Aperture = shot.Aperture ?? planned.Aperture,
        Iso = shot.Iso ?? planned.Iso,
        Lights = [.. planned.Lights.Select(light => light.Role == planned.Lights[0].Role ? light with { Power = shot.Power } : light)],
        WhiteMargin = darkest,
        BrightestMargin = darkest + spread,
    };

    private IEnumerable<Advice> Pieces(LightPlan below, Stops light, ValueList<KitChange> placed, ExposurePlan shot, Stops lessEven)
    {
        ValueList<KitChange> given = [new KitChange.Gives(below.Flash, light), .. placed, .. Strict(lessEven)];
        var state = replanner.With(given);
        if (state.Plan(now, []) is not { } here)
        {
            yield break;
        }

        var asItIs = Promise.Of(here);
        if (IsRight(asItIs))
        {
            yield return new Advice(given, Seen(asItIs, lessEven));
        }

        var others = here.Verdict.Verdict == Verdict.Works ? Kept(state, here, below, shot) : [.. JustWhite(state, here), .. new MendingLadders(state, here).Cheapest()];
        foreach (var piece in others.Where(piece => IsRight(piece.Promise)))
        {
            yield return new Advice([.. given, .. piece.Changes], Seen(piece.Promise, lessEven));
        }
    }

    // Where there is no room for the margin aimed at, one without it may just do.
    private static IEnumerable<Advice> JustWhite(Replanner state, ExposurePlan here)
    {
        ValueList<KitChange> changes = [new KitChange.TargetMargin(here.SetUp, default)];
        return state.Plan(here, changes) is { } promise && !promise.IsSetLike(here) ? [new Advice(changes, promise)] : [];
    }

    // A plan knows its own brightest place only: where the frame's is brighter, the limit is that much stricter.
    private IEnumerable<KitChange> Strict(Stops lessEven) => lessEven.Value > 0
        ? [new KitChange.VeilLimit(now.SetUp, Veil.LimitWithRoom(replanner.SetUpOf(now).VeilLimit, lessEven))]
        : [];

    private static Promise Seen(Promise promise, Stops lessEven) => lessEven.Value > 0
        ? promise with { BrightestMargin = promise.BrightestMargin + lessEven, HighestMargin = promise.HighestMargin + lessEven }
        : promise;

    // Instead of the dial: the place at which its power can stay as it was set.
    private static IEnumerable<Advice> Kept(Replanner state, ExposurePlan here, LightPlan below, ExposurePlan shot)
    {
        var (set, asked) = (PowerOf(shot, below.Place), PowerOf(here, below.Place));
        return set == asked || here.Iso != shot.Iso ? [] : Places(new DistanceTable(state, here).Of(here.Lights.First(light => light.Place == below.Place)).ToList(), set)
            .Select(distance => (ValueList<KitChange>)[new KitChange.Move(here.SetUp, below.Place, distance)])
            .Select(changes => state.Plan(here, changes) is { } planned ? new Advice(changes, planned) : null).OfType<Advice>()
            .Where(tried => tried.Promise is var promise && promise.Iso == here.Iso && promise.Lights.First(light => light.Place == below.Place).Power == set && IsRight(promise))
            .Take(1);
    }

    // Between two planned distances the light changes evenly in stops; a little nearer first, since a little too much light does not show.
    private static IEnumerable<Length> Places(List<DistanceStep> steps, FlashPower set) =>
        from pair in steps.Zip(steps.Skip(1))
        where pair.First.ExactShare <= set.Fraction && pair.Second.ExactShare >= set.Fraction && pair.Second.ExactShare > pair.First.ExactShare
        let along = Math.Log2(set.Fraction / pair.First.ExactShare) / Math.Log2(pair.Second.ExactShare / pair.First.ExactShare)
        let centimetres = pair.First.Distance.Centimeters + (along * (pair.Second.Distance - pair.First.Distance).Centimeters)
        from nearer in (double[])[0.5, 1.5, 0]
        select Length.FromCentimeters(Math.Round(centimetres - nearer));

    private static FlashPower PowerOf(ExposurePlan exposure, int place) => exposure.Lights.First(light => light.Place == place).Power;

    // White all over, and no brighter anywhere than the veil allows.
    private static bool IsRight(Promise promise) =>
        promise is { IsUsable: true, WhiteMargin: { } darkest, BrightestMargin: { } brightest, HighestMargin: { } highest }
        && darkest.Value >= -Same && brightest.Value <= highest.Value + Same;
}
