using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>Works out what to turn after a test frame: the flash below the panel, or behind an upright sheet, is taken to give what the frame shows, and that state is planned.</summary>
internal sealed class FrameAdviser(Replanner replanner, ExposurePlan now)
{
    private const double Same = 1e-6;

    /// <summary>What the frame says.</summary>
    public FrameAdvice? After(TestedFrame frame)
    {
        if (SeenFrame.Of(replanner, now, frame) is not { } seen)
        {
            return null;
        }

        var shot = seen.AsShot(frame.Shot);
        return new FrameAdvice(shot, seen.Expected, seen is { Gives: { } light, IsSetOtherwise: false } ? [.. Pieces(seen, light, shot)] : [])
        {
            Gives = seen.Gives,
            LessEven = seen.LessEven,
            IsSetOtherwise = seen.IsSetOtherwise,
        };
    }

    /// <summary>White all over, and no brighter anywhere than the veil allows.</summary>
    internal static bool IsRight(Promise promise) =>
        promise is { IsUsable: true, WhiteMargin: { } darkest, BrightestMargin: { } brightest, HighestMargin: { } highest }
        && darkest.Value >= -Same && brightest.Value <= highest.Value + Same;

    private IEnumerable<Advice> Pieces(SeenFrame seen, Stops light, ExposurePlan shot)
    {
        var given = seen.Given(replanner, light);
        var state = replanner.With(given);
        if (state.Plan(now, []) is not { } here)
        {
            yield break;
        }

        var asItIs = Promise.Of(here);
        if (IsRight(asItIs))
        {
            yield return new Advice(given, seen.Seen(asItIs));
        }

        var others = here.Verdict.Verdict == Verdict.Works ? Kept(state, here, seen.Below, shot) : [.. JustWhite(state, here), .. new MendingLadders(state, here).Cheapest()];
        foreach (var piece in others.Where(piece => IsRight(piece.Promise)))
        {
            yield return new Advice([.. given, .. piece.Changes], seen.Seen(piece.Promise));
        }
    }

    // Where there is no room for the margin aimed at, one without it may just do.
    private static IEnumerable<Advice> JustWhite(Replanner state, ExposurePlan here)
    {
        ValueList<KitChange> changes = [new KitChange.TargetMargin(here.SetUp, default)];
        return state.Plan(here, changes) is { } promise && !promise.IsSetLike(here) ? [new Advice(changes, promise)] : [];
    }

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
}
