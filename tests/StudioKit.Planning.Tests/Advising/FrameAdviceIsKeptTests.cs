using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Expected;
using StudioKit.Planning.Tests.Plans;
using Xunit.Abstractions;

namespace StudioKit.Planning.Tests.Advising;

/// <summary>A test frame of a flash that gives more or less than its number says: whoever follows the advice gets a white background, and no more veil than allowed.</summary>
/// <remarks>The truth is a whole plan of the kit whose flash gives what it really gives; the adviser sees only the margin that this truth shows for what was set.</remarks>
public sealed class FrameAdviceIsKeptTests(ITestOutputHelper output)
{
    private const double Same = 1e-6;

    private static readonly int Kits = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 8;

    private static readonly Gen<State> AnyState =
        from gives in Gen.Double[-2, 2]
        from power in Gen.Int[0, 6]
        from iso in Gen.OneOf(Gen.Const(0.5), Gen.Const(1.0), Gen.Const(2.0))
        from opening in Gen.OneOf(Gen.Const(0.8), Gen.Const(1.0), Gen.Const(1.4))
        from nearer in Gen.OneOf(Gen.Const(1.0), Gen.Const(1.0), Gen.Const(0.75))
        select new State(new Stops(gives), FlashPower.FromStopsBelowFull(power), iso, opening, nearer);

    [Fact]
    public void Advice_after_a_test_frame_is_kept_on_random_kits_and_states()
    {
        var followed = 0;
        Gen.Select(LikelyKits.Any, WhiteFrames.AnyPanel, AnyState).Sample(
            (likely, panel, state) =>
            {
                var read = new KitReadResult(WhiteFrames.OnWhite(likely, panel), [], [], new());
                followed += Follow(read, KitPlanner.Plan(read), state);
            },
            iter: Kits,
            threads: 1);

        output.WriteLine($"{followed} pieces of advice were followed.");
        followed.Should().BeGreaterThan(Kits / 4);
    }

    [Fact]
    public void Advice_after_a_test_frame_is_kept_on_the_demo_kit()
    {
        var (read, plan) = (KitText.DemoRead("fen-edge.yaml"), KitText.Demo("fen-edge.yaml"));

        Follow(read, plan, new State(new Stops(-1), new FlashPower(1.0 / 16), 1, 1, 1)).Should().BeGreaterThan(0);
    }

    [Fact]
    public void A_frame_sixteen_times_off_was_set_otherwise_and_gets_no_advice()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var exposure = plan.Exposures.First(candidate => candidate is { Kind: SetUpKind.WhiteBackground, IsUsable: true });
        var shot = new ShotSettings(exposure.Lights[0].Power);

        var advice = plan.Advice.AfterFrame(exposure, new TestedFrame(shot, exposure.WhiteMargin!.Value - new Stops(4.5)))!;

        advice.IsSetOtherwise.Should().BeTrue();
        advice.Pieces.Should().BeEmpty();
    }

    [Fact]
    public void A_white_frame_gets_what_the_plan_expects_and_nothing_to_turn()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var exposure = plan.Exposures.First(candidate => candidate is { Kind: SetUpKind.WhiteBackground, IsUsable: true });

        var advice = plan.Advice.AfterFrame(exposure, new TestedFrame(new ShotSettings(exposure.Lights[0].Power), null))!;

        advice.Expected.Value.Should().BeApproximately(exposure.WhiteMargin!.Value.Value, Same);
        (advice.Gives, advice.Pieces.Count).Should().Be((null, 0));
    }

    /// <summary>Turning up brightens every place alike: the brightest lies as far over the darkest as the frame shows, whatever the plan thinks of it.</summary>
    [Theory]
    [InlineData(1.1)]
    [InlineData(1.4)]
    public void A_background_less_even_than_planned_is_promised_as_uneven_as_it_is(double spread)
    {
        var (plan, exposure, shot) = Shown();

        var advice = plan.Advice.AfterFrame(exposure, new TestedFrame(shot, new Stops(-0.6)) { Spread = new Stops(spread) })!;

        var spreads = advice.Pieces.Where(piece => !piece.Changes.Any(change => change.IsDoneByHand)).Select(piece => (piece.Promise.BrightestMargin!.Value - piece.Promise.WhiteMargin!.Value).Value).ToList();
        spreads.Should().NotBeEmpty().And.OnlyContain(promised => Math.Abs(promised - spread) < Same);
        advice.Pieces.Select(piece => piece.Promise.BrightestMargin!.Value.Value).Should().OnlyContain(brightest => brightest <= exposure.HighestMargin!.Value.Value + Same, "the veil limit is the set-up's");
    }

    [Fact]
    public void A_background_more_uneven_than_the_veil_allows_is_not_made_white_by_more_light()
    {
        var (plan, exposure, shot) = Shown();

        var advice = plan.Advice.AfterFrame(exposure, new TestedFrame(shot, new Stops(-2)) { Spread = exposure.HighestMargin!.Value + new Stops(0.3) })!;

        advice.ByDial.Should().BeNull();
        advice.LessEven.Value.Should().BeGreaterThan(0.5);
    }

    /// <summary>Just white, the brightest place keeps to the limit; with the margin that the set-up aims for it would not.</summary>
    [Fact]
    public void Where_there_is_no_room_for_the_margin_aimed_at_just_white_is_advised()
    {
        var (plan, exposure, shot) = Shown();

        var advice = plan.Advice.AfterFrame(exposure, new TestedFrame(shot, new Stops(-2)) { Spread = exposure.HighestMargin!.Value - new Stops(0.33) })!;

        advice.ByDial!.Promise.WhiteMargin!.Value.Value.Should().BeInRange(-Same, 1.0 / 3);
    }

    private static (Plan Plan, ExposurePlan Exposure, ShotSettings Shot) Shown()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var exposure = plan.Exposures.First(candidate => candidate is { Kind: SetUpKind.WhiteBackground, IsUsable: true });
        return (plan, exposure, new ShotSettings(exposure.Lights[0].Power));
    }

    // How many pieces were followed, over the first exposure that there is light for.
    private static int Follow(KitReadResult read, Plan plan, State state)
    {
        var exposure = plan.Exposures.FirstOrDefault(candidate => candidate is { Kind: SetUpKind.WhiteBackground, WhiteMargin: not null });
        if (exposure is null)
        {
            return 0;
        }

        var below = exposure.Lights.First(light => light.Role.IsBackground());
        var iso = new IsoSpeed(exposure.Iso.Value * state.Iso);
        var aperture = new FNumber(exposure.Aperture.Value * state.Opening);
        var distance = below.Distance * state.Nearer;
        var truth = new KitChange.Gives(below.Flash, state.Gives);
        KitChange[] shot = state.Nearer == 1 ? [truth] : [truth, new KitChange.Move(exposure.SetUp, below.Place, distance)];
        if (WhiteFrames.Planned(read, shot, exposure) is not { WhiteMargin: not null } seen)
        {
            return 0;
        }

        var darkest = WhiteFrames.MarginAt(seen, state.Power, iso, aperture);
        var advice = plan.Advice.AfterFrame(exposure, new TestedFrame(new ShotSettings(state.Power, distance, aperture, iso), darkest));
        if (advice is null)
        {
            return 0;
        }

        advice.Gives!.Value.Value.Should().BeApproximately(state.Gives.Value, Same, "the plan knows all but what the flash gives");
        foreach (var piece in advice.Pieces)
        {
            IsKept(read, exposure, piece, truth);
        }

        return advice.Pieces.Count;
    }

    private static void IsKept(KitReadResult read, ExposurePlan exposure, Advice piece, KitChange.Gives truth)
    {
        var planned = WhiteFrames.Planned(read, [.. piece.Changes], exposure)!;
        planned.IsSetLike(piece.Promise).Should().BeTrue("the settings are those of the advice");
        planned.WhiteMargin!.Value.Value.Should().BeApproximately(piece.Promise.WhiteMargin!.Value.Value, Same);
        planned.BrightestMargin!.Value.Value.Should().BeApproximately(piece.Promise.BrightestMargin!.Value.Value, Same);

        var real = WhiteFrames.Planned(read, [truth, .. piece.Changes.Where(change => change is not KitChange.Gives)], exposure)!;
        var below = piece.Promise.Lights.First(light => light.Role.IsBackground());
        var darkest = WhiteFrames.MarginAt(real, below.Power, piece.Promise.Iso, piece.Promise.Aperture).Value;
        darkest.Should().BeGreaterThan(-1e-4, "it is white all over");
        (darkest + (real.BrightestMargin!.Value - real.WhiteMargin!.Value).Value).Should().BeLessThan(real.HighestMargin!.Value.Value + 1e-4, "it veils no more than allowed");
    }

    private sealed record State(Stops Gives, FlashPower Power, double Iso, double Opening, double Nearer);
}
