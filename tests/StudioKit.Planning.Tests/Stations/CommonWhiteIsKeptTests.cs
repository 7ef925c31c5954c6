using System.Globalization;
using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Expected;
using StudioKit.Planning.Stations.OneWhite;
using StudioKit.Planning.Tests.Advising;
using StudioKit.Planning.Tests.Plans;
using Xunit.Abstractions;

namespace StudioKit.Planning.Tests.Stations;

/// <summary>Stations whose flashes give more or less than their numbers say: whoever sets them as told has one white.</summary>
/// <remarks>The truth of each station is a whole plan of the kit whose flash gives what it really gives; the planner sees only the margin that this truth shows for what was set.</remarks>
public sealed class CommonWhiteIsKeptTests(ITestOutputHelper output)
{
    private const double Same = 1e-6;

    private static readonly int Pairs = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 4;

    private static readonly Gen<Shown> AnyShown = Gen.Select(
        LikelyKits.Any, WhiteFrames.AnyPanel, Gen.Double[-1.5, 1.5], Gen.Int[1, 6], Gen.OneOf(Gen.Const(PowerStep.Third), Gen.Const(PowerStep.Half), Gen.Const(PowerStep.Whole)),
        (kit, panel, gives, power, step) => Shown.Of(new KitReadResult(Dialled(WhiteFrames.OnWhite(kit, panel), step), [], [], new()), new Stops(gives), power));

    [Fact]
    public void What_is_told_is_kept_on_random_pairs_of_kits()
    {
        var followed = 0;
        Gen.Select(AnyShown, AnyShown, Gen.Double[0, 1]).Sample(
            (one, other, target) =>
            {
                if (one.Station is not null && other.Station is not null)
                {
                    followed += Follow([one, other], CommonWhitePlanner.Of([one.Station, other.Station], new Stops(target), CommonWhitePlanner.UsualTolerance));
                }
            },
            iter: Pairs,
            threads: 1);

        output.WriteLine($"{followed} pieces of advice were followed.");
        followed.Should().BePositive();
    }

    [Theory]
    [InlineData(-0.7, 0.4, 1.0 / 3)]
    [InlineData(0.9, -0.2, 0.75)]
    public void What_is_told_is_kept_on_the_demo_kit_built_twice(double gives, double otherGives, double target)
    {
        Shown[] shown = [Shown.Of(KitText.DemoRead("fen-edge.yaml"), new Stops(gives), 4), Shown.Of(KitText.DemoRead("fen-edge.yaml"), new Stops(otherGives), 5)];

        var white = CommonWhitePlanner.Of([.. shown.Select(of => of.Station!)], new Stops(target), CommonWhitePlanner.UsualTolerance);

        Follow(shown, white).Should().Be(2);
        white.Stations.Select(station => station.Name).Should().Equal("Fen edge", "Fen edge (2)");
        white.Before.Range.Value.Should().BeApproximately(Math.Abs(gives - otherGives), Same, "both have the same card");
        white.After!.Range.Value.Should().BeLessThan((1.0 / 3) + Same, "each lies within half a click, a sixth of a stop, of one margin");
        white.Stations.Should().OnlyContain(station => station.Reaches && Math.Abs(station.After!.Deviation.Value) < (1.0 / 6) + Same);
    }

    /// <summary>Reciprocity: so many stops less light is as many stops more power, click by click, and the margin is the same again.</summary>
    [Theory]
    [InlineData(-1)]
    [InlineData(-2.0 / 3)]
    [InlineData(1.0 / 3)]
    public void Light_that_is_missing_by_whole_clicks_is_made_up_for_by_as_many(double gives)
    {
        var (as_written, other) = (Shown.Of(KitText.DemoRead("fen-edge.yaml"), default, 4), Shown.Of(KitText.DemoRead("fen-edge.yaml"), new Stops(gives), 4));

        var stations = CommonWhitePlanner.Of([as_written.Station!, other.Station!], null, CommonWhitePlanner.UsualTolerance).Stations;

        var (one, two) = (Below(stations[0].Advice!.Promise), Below(stations[1].Advice!.Promise));
        (one.Power.StopsBelowFull - two.Power.StopsBelowFull).Should().BeApproximately(-gives, Same);
        stations[1].After!.Margin.Value.Should().BeApproximately(stations[0].After!.Margin.Value, Same);
        stations[1].Advice!.Promise.Iso.Should().Be(stations[0].Advice!.Promise.Iso, "the dial reaches");
    }

    /// <summary>Full power is where the dial ends: from then on the ISO speed has to give what is missing, or nothing does.</summary>
    [Fact]
    public void Where_the_dial_ends_another_control_is_told_or_what_is_in_the_way()
    {
        var (weak, sound) = (Shown.Of(KitText.DemoRead("fen-edge.yaml"), new Stops(-3.5), 2), Shown.Of(KitText.DemoRead("fen-edge.yaml"), default, 4));

        var white = CommonWhitePlanner.Of([weak.Station!, sound.Station!], new Stops(2), CommonWhitePlanner.UsualTolerance);

        var station = white.Stations[0];
        station.Should().Match<StationWhite>(of => (of.Reaches && of.Advice!.Promise.Iso.Value > weak.Station!.Exposure.Iso.Value) || of.Missed.Count > 0);
        Follow([weak, sound], white).Should().BePositive();
    }

    [Fact]
    public void The_common_margin_is_the_highest_goal_and_falls_to_what_all_come_to()
    {
        var read = KitText.DemoRead("fen-edge.yaml");
        var (one, modest, greedy) = (Shown.Of(read, default, 4), Shown.Of(Aiming(read, 0.5), default, 4), Shown.Of(Aiming(read, 3), default, 4));

        var goal = CommonWhitePlanner.Of([one.Station!, modest.Station!], null, CommonWhitePlanner.UsualTolerance);
        var reached = CommonWhitePlanner.Of([one.Station!, greedy.Station!], null, CommonWhitePlanner.UsualTolerance);

        (goal.Margin.Value, goal.Basis).Should().Be((0.5, CommonMargin.Goal));
        reached.Basis.Should().Be(CommonMargin.WithinReach, "so much over clipping veils");
        reached.Stations.Should().OnlyContain(station => station.Reaches);
        CommonWhitePlanner.Of([one.Station!, greedy.Station!], reached.Margin + new Stops(1.0 / 3), CommonWhitePlanner.UsualTolerance).Stations.Should().Contain(station => !station.Reaches, "it was the highest");
    }

    /// <summary>JCGM 106, 7.4: a measurement that is known to a tenth of the tolerance decides; known to the whole of it, it decides neither way.</summary>
    [Theory]
    [InlineData(0.02, ConformityDecision.Within)]
    [InlineData(0.4, ConformityDecision.NotDecided)]
    public void A_ladder_that_says_little_decides_little(double uncertainty, ConformityDecision decision)
    {
        var station = Shown.Of(KitText.DemoRead("fen-edge.yaml"), new Stops(-0.5), 4).Station! with { Uncertainty = new Stops(uncertainty) };

        var white = CommonWhitePlanner.Of([station, station], null, CommonWhitePlanner.UsualTolerance);

        white.Stations.Should().OnlyContain(of => of.Decision == decision);
        white.IsOneWhite.Should().Be(decision == ConformityDecision.Within);

        // A flash repeats to a twentieth of a stop beside what was measured: √(u² + 0.05²).
        white.Stations[0].Before.Uncertainty.Value.Should().BeApproximately(Math.Sqrt((uncertainty * uncertainty) + 0.0025), Same);
    }

    [Fact]
    public void One_station_and_one_that_shows_nothing_are_refused()
    {
        var station = Shown.Of(KitText.DemoRead("fen-edge.yaml"), default, 4).Station!;
        var white = station with { Frame = station.Frame with { Darkest = null } };

        FluentActions.Invoking(() => CommonWhitePlanner.Of([station], null, CommonWhitePlanner.UsualTolerance)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => CommonWhitePlanner.Of([station, white], null, CommonWhitePlanner.UsualTolerance)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => CommonWhitePlanner.Of([station, station], new Stops(-1), CommonWhitePlanner.UsualTolerance)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => CommonWhitePlanner.Of([station, station], null, default)).Should().Throw<ArgumentOutOfRangeException>();
    }

    private static KitReadResult Aiming(KitReadResult read, double margin) =>
        read with { Kit = read.Kit! with { SetUps = [.. read.Kit.SetUps.Select(setUp => setUp with { TargetWhiteMargin = new Stops(margin) })] } };

    private static KitSpec Dialled(KitSpec kit, PowerStep step) => kit with { Flashes = [.. kit.Flashes.Select(flash => flash with { PowerStep = step })] };

    private static PromisedLight Below(Promise promise) => promise.Lights.First(light => light.Role.IsBackground());

    // How many pieces were followed: planned again as a whole, and set in the station as it really is.
    private static int Follow(Shown[] shown, CommonWhite white)
    {
        foreach (var (of, row) in shown.Zip(white.Stations).Where(pair => pair.Second.Advice is not null))
        {
            var (advice, exposure) = (row.Advice!, of.Station!.Exposure);
            row.Gives.Value.Should().BeApproximately(of.Gives.By.Value, Same, "the plan knows all but what the flash gives");
            var planned = WhiteFrames.Planned(of.Read, advice.Changes, exposure)!;
            planned.IsSetLike(advice.Promise).Should().BeTrue("the settings are those of the advice");
            planned.WhiteMargin!.Value.Value.Should().BeApproximately(row.After!.Margin.Value, Same);

            var real = WhiteFrames.Planned(of.Read, [of.Gives, .. advice.Changes.Where(change => change is not KitChange.Gives)], exposure)!;
            WhiteFrames.MarginAt(real, Below(advice.Promise).Power, advice.Promise.Iso, advice.Promise.Aperture).Value.Should().BeApproximately(row.After.Margin.Value, 1e-4, "that margin was promised");
            row.After.Margin.Value.Should().BeGreaterThan(-Same, "it is white all over");
            if (row.Reaches)
            {
                Math.Abs(row.After.Margin.Value - white.Margin.Value).Should().BeLessThan((Below(advice.Promise).Mark.Step.OneClick().Value / 2) + Same, "no click of the dial comes nearer");
            }

            var before = WhiteFrames.MarginAt(WhiteFrames.Planned(of.Read, [of.Gives], exposure)!, exposure.Lights.First(light => light.Role.IsBackground()).Power, exposure.Iso, exposure.Aperture);
            row.Before.Margin.Value.Should().BeApproximately(before.Value, 1e-4, "that is what the card as it is gives");
        }

        return white.Stations.Count(station => station.Advice is not null);
    }

    // A station with what its flash really gives; none where there is no light to see, or what is white cannot be photographed.
    private sealed record Shown(KitReadResult Read, KitChange.Gives Gives, MeasuredStation? Station)
    {
        public static Shown Of(KitReadResult read, Stops light, int stopsBelow)
        {
            var plan = KitPlanner.Plan(read);
            var exposure = plan.Exposures.FirstOrDefault(candidate => candidate is { Kind: SetUpKind.WhiteBackground, WhiteMargin: not null });
            var gives = new KitChange.Gives(exposure?.Lights.First(flash => flash.Role.IsBackground()).Flash ?? "", light);
            if (exposure is null || WhiteFrames.Planned(read, [gives], exposure) is not { WhiteMargin: not null } real)
            {
                return new Shown(read, gives, null);
            }

            var power = FlashPower.FromStopsBelowFull(stopsBelow);
            return new Shown(read, gives, new MeasuredStation
            {
                Plan = plan,
                Exposure = exposure,
                Pitch = exposure.CameraPitches[0],
                Frame = new TestedFrame(new ShotSettings(power), WhiteFrames.MarginAt(real, power, exposure.Iso, exposure.Aperture)),
                Uncertainty = new Stops(0.04),
                OtherShape = default,
            });
        }
    }
}
