using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Placements;
using StudioKit.Physics.Light.Views;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

public sealed class FlashPlacementTests
{
    private static readonly Lazy<PlacementResult> Found = new(() => FlashPlacement.Search(Case()));

    [Fact]
    public void The_recommended_placement_serves_every_framing() =>
        Found.Value.Recommended!.Framings.Should().HaveCount(2).And.AllSatisfy(framing =>
        {
            framing.Darkest.Value.Should().BeGreaterThanOrEqualTo((1.0 / 3) - 1e-9);
            framing.Brightest.Value.Should().BeLessThanOrEqualTo(framing.Framing.HighestMargin.Value);
            framing.Power.Should().BeInRange(1.0 / 128, 1);
        });

    /// <summary>Second route: the whole scene solved afresh on a finer grid and looked at in more points.</summary>
    [Fact]
    public void What_the_search_promises_a_full_solve_confirms()
    {
        var best = Found.Value.Recommended!;
        foreach (var framing in best.Framings)
        {
            var scene = new LightScene
            {
                Panel = Studio.Panel() with { Height = best.Candidate.PanelHeight },
                Surround = best.Candidate.Surround,
                Emitters = [.. best.Candidate.Emitters(framing.Power)],
            };
            var margins = WhiteMarginMap.Of(LightSolver.Solve(scene, new PanelGrid(30, 30)), framing.Framing.View, framing.Framing.Camera);

            // The map's straight lines between points 20 mm apart and the search's coarser look at the frame leave some hundredths of a stop.
            margins.Darkest!.Margin.Value.Should().BeApproximately(framing.Darkest.Value, 0.03);
            margins.Brightest!.Margin.Value.Should().BeApproximately(framing.Brightest.Value, 0.03);
        }
    }

    [Fact]
    public void No_placement_of_the_frontier_beats_another_in_both() =>
        Found.Value.Frontier.Zip(Found.Value.Frontier.Skip(1)).Should().AllSatisfy(pair =>
        {
            pair.Second.MeanEnergy.Should().BeGreaterThanOrEqualTo(pair.First.MeanEnergy);
            pair.Second.Spread.Value.Should().BeLessThan(pair.First.Spread.Value);
        });

    [Fact]
    public void Nothing_on_the_frontier_needs_less_energy_than_the_recommended_placement() =>
        Found.Value.Frontier.Should().NotBeEmpty().And.AllSatisfy(placement =>
            placement.MeanEnergy.Should().BeGreaterThanOrEqualTo(Found.Value.Recommended!.MeanEnergy));

    [Fact]
    public void The_same_search_gives_the_same_answer()
    {
        var again = FlashPlacement.Search(Case());

        again.Recommended!.Candidate.Should().BeEquivalentTo(Found.Value.Recommended!.Candidate);
        again.Recommended.MeanEnergy.Should().Be(Found.Value.Recommended!.MeanEnergy);
    }

    [Fact]
    public void White_skirts_save_energy_where_they_are_allowed()
    {
        var open = FlashPlacement.Search(Case() with { Surrounds = [Studio.BlackGround] });

        Found.Value.Recommended!.Candidate.Surround.SkirtReflectance.Should().Be(0.8);
        open.Recommended!.MeanEnergy.Should().BeGreaterThan(Found.Value.Recommended.MeanEnergy);
    }

    [Fact]
    public void A_flash_for_a_frame_in_the_middle_stands_in_the_middle()
    {
        var straight = Framing("beetle", 90, 60);
        var result = FlashPlacement.Search(Case() with { Framings = [straight], Counts = [1], Surrounds = [Studio.BlackGround] });

        result.Recommended!.Candidate.OffsetRight.Millimeters.Should().BeApproximately(0, 5);
        result.Recommended.Candidate.OffsetBack.Millimeters.Should().BeApproximately(0, 5);
    }

    [Fact]
    public void Where_the_veil_allows_nothing_the_nearest_placement_says_so()
    {
        var result = FlashPlacement.Search(Case() with { Framings = [Framing("spider", 40, 160) with { HighestMargin = new Stops(0.34) }] });

        result.Recommended.Should().BeNull();
        result.Frontier.Should().BeEmpty();
        result.Nearest!.Limit.Should().Be(PlacementLimit.Veil);
        result.Advice.Should().Contain("veil");
    }

    [Fact]
    public void Where_full_power_falls_short_the_advice_names_the_shortfall()
    {
        var weak = Flash("weak", 7) with { FullPowerIntensityTime = 1 };
        var result = FlashPlacement.Search(Case() with { Flashes = [weak] });

        result.Nearest!.Limit.Should().Be(PlacementLimit.FullPower);
        result.Advice.Should().Contain("short");
    }

    [Fact]
    public void A_frame_that_sees_past_the_panel_is_named()
    {
        var result = FlashPlacement.Search(Case() with { Framings = [Framing("moth", 5, 60)] });

        result.Nearest!.Limit.Should().Be(PlacementLimit.PanelTooSmall);
        result.Advice.Should().Contain("panel larger");
    }

    [Fact]
    public void Progress_reaches_the_end_and_a_cancelled_search_stops()
    {
        var seen = new Watcher();
        var result = FlashPlacement.Search(Case(), seen);
        var stopped = () => FlashPlacement.Search(Case(), cancellation: new CancellationToken(canceled: true));

        seen.Reports.Should().Contain(new PlacementProgress(result.Evaluated, result.Evaluated));
        stopped.Should().Throw<OperationCanceledException>();
    }

    [Fact]
    public void A_search_without_framings_or_with_three_flashes_is_refused()
    {
        var none = () => FlashPlacement.Search(Case() with { Framings = [] });
        var three = () => FlashPlacement.Search(Case() with { Counts = [3] });

        none.Should().Throw<ArgumentException>();
        three.Should().Throw<ArgumentException>();
    }

    private static PlacementCase Case() => new()
    {
        Panel = Studio.Panel(),
        Framings = [Framing("beetle", 60, 60), Framing("frog", 45, 120)],
        Flashes = [Flash("bare", 7), Flash("dome", 1)],
        PanelHeights = [Length.FromMillimeters(500)],
        Surrounds = [Studio.BlackGround, Studio.WhiteSkirts],
        Distances = [Length.FromMillimeters(200), Length.FromMillimeters(400)],
        Aims = [false],
        OffsetsRight = [Length.Zero, Length.FromMillimeters(100)],
        OffsetsBack = [Length.FromMillimeters(-50), Length.FromMillimeters(50)],
    };

    // The same flux through both: I₀ ∝ n + 1.
    private static PlacementFlash Flash(string name, double exponent) => new()
    {
        Name = name,
        Lobe = new CosineLobe(exponent, exponent),
        Width = Length.FromMillimeters(70),
        Height = Length.FromMillimeters(40),
        FullPowerIntensityTime = 280 * (exponent + 1),
    };

    private static PlacementFraming Framing(string name, double pitch, double width) => new(
        new CameraView
        {
            Name = name,
            FieldWidth = Length.FromMillimeters(width),
            FieldHeight = Length.FromMillimeters(width / 1.5),
            PupilDistance = Length.FromMillimeters(400),
            Pitch = Angle.FromDegrees(pitch),
        },
        new CameraCase { Aperture = new FNumber(16), Iso = new IsoSpeed(200) },
        new Stops(1.7));

    private sealed class Watcher : IProgress<PlacementProgress>
    {
        public System.Collections.Concurrent.ConcurrentBag<PlacementProgress> Reports { get; } = [];

        public void Report(PlacementProgress value) => Reports.Add(value);
    }
}
