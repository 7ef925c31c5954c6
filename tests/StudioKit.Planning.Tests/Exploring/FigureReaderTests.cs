using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Exploring;

/// <summary>The measures of designs, by hand or by plain counting in a plan.</summary>
public sealed class FigureReaderTests
{
    private const string Sections =
        """
        subjects:
          - {name: crane fly, group: flying-insects, length: 30 mm, height: 6 mm, speed: 0 m/s}
        session: {frame-time: 2 s, test-frames: 4, frames: 26, rounds: 2}

        """;

    private const string Cell = "flashes-per-set: 100, cell: {name: cell, chemistry: nickel-metal-hydride, voltage: 1.2 V, capacity: 2 Ah, mass: 27 g}, cell-count: 4";

    /// <summary>Four cells of 1.2 V and 2 Ah hold 9.6 Wh and give a hundred full-power flashes: each takes 96 mWh.</summary>
    [Fact]
    public void A_session_takes_out_of_the_cells_what_its_flashes_are_of_a_set()
    {
        var plan = HandKit.Plan(HandKit.White + Sections, one: Cell + ", spare-sets: 2", two: Cell);
        var figures = FigureReader.Of(plan, 0);

        var fullPower = plan.Session!.Flashes.Sum(use => use.FullPowerFlashes);
        fullPower.Should().BeGreaterThan(10, "else a tenth of a watt-hour tells nothing");
        figures[DesignMeasure.Energy].Should().BeApproximately(fullPower * 0.096, 0.05);

        // 80 of the hundred count; each flash fires at the mean share that it has over the session.
        var fewest = plan.Session.Flashes.Min(use => 80 / (use.FullPowerFlashes / use.Flashes));
        figures[DesignMeasure.Flashes].Should().BeApproximately(fewest, 1);
    }

    [Fact]
    public void Mass_and_price_are_those_of_all_that_is_carried_and_bought()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var figures = FigureReader.Of(plan, 12.5m);

        figures[DesignMeasure.Mass].Should().BeApproximately(plan.Pack.Items.Sum(item => item.Mass.Grams) + plan.Kit.Pack.Bags.Sum(bag => bag.Mass.Grams), 0.51);
        figures[DesignMeasure.Price].Should().Be((double)(plan.Frame!.TotalCost!.Value + 12.5m));
    }

    [Fact]
    public void A_price_that_one_line_of_the_shopping_list_lacks_is_not_known() => FigureReader.Of(KitText.Demo("pond-edge.yaml"), 0)[DesignMeasure.Price].Should().BeNull();

    [Fact]
    public void The_card_that_is_least_sure_to_be_white_counts()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var white = plan.Exposures.Where(exposure => exposure.Kind == Kits.SetUps.SetUpKind.WhiteBackground).ToList();
        var figures = FigureReader.Of(plan, 0);

        white.Should().HaveCountGreaterThan(1);
        figures[DesignMeasure.FirstWhite].Should().BeApproximately(white.Min(exposure => exposure.Verdict.FirstFrame!.Value), 5.1e-4);
        figures[DesignMeasure.WhiteMargin].Should().BeApproximately(white.Min(exposure => exposure.WhiteMargin!.Value.Value), 5.1e-3);
        figures[DesignMeasure.Cards].Should().Be(plan.Ring.Count);
    }

    /// <summary>The panel of the small kit is 500 mm wide, and no pipe of its frame is longer.</summary>
    [Fact]
    public void The_longest_part_of_a_studio_is_its_panel_where_no_pipe_is_longer()
    {
        var plan = KitText.Plan(OpenKits.Small);
        var figures = FigureReader.Of(plan, 0);

        plan.Frame!.Geometry.Members.Max(member => member.CutLength.Millimeters).Should().BeLessThan(500);
        figures[DesignMeasure.PackedLength].Should().Be(500);
        figures[DesignMeasure.Pieces].Should().BeGreaterThanOrEqualTo(plan.Frame.Geometry.Members.Count + plan.Frame.Fittings.Sum(fitting => fitting.Count) + 1, "pipes, fittings and the panel");
    }

    [Fact]
    public void A_feature_counts_by_its_best_card_and_the_worst_feature_for_all()
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var figures = FigureReader.Of(plan, 0);
        var (smear, depth) = (0.0, double.MaxValue);
        foreach (var subject in plan.Kit.Subjects.Where(subject => subject.Feature is not null))
        {
            var (leastSmear, mostDepth) = (double.MaxValue, 0.0);
            foreach (var exposure in plan.Exposures.Where(exposure => exposure.IsUsable))
            {
                foreach (var seen in exposure.FeatureSmears.Where(seen => seen.Subject == subject.Name))
                {
                    leastSmear = Math.Min(leastSmear, seen.AtSubject.Micrometers);
                }
            }

            foreach (var feature in plan.Features.Where(feature => feature.Subject == subject.Name && feature.ShownWhole))
            {
                mostDepth = Math.Max(mostDepth, feature.Depth?.Millimeters ?? 0);
            }

            (smear, depth) = (Math.Max(smear, leastSmear), Math.Min(depth, mostDepth));
        }

        figures[DesignMeasure.Smear].Should().BeApproximately(smear, 0.051);
        figures[DesignMeasure.Depth].Should().BeApproximately(depth, 0.0051);
    }

    [Theory]
    [InlineData(DesignMeasure.Mass, false)]
    [InlineData(DesignMeasure.Price, false)]
    [InlineData(DesignMeasure.WhiteMargin, true)]
    [InlineData(DesignMeasure.FirstWhite, true)]
    [InlineData(DesignMeasure.Flashes, true)]
    [InlineData(DesignMeasure.Energy, false)]
    [InlineData(DesignMeasure.PackedLength, false)]
    [InlineData(DesignMeasure.Pieces, false)]
    [InlineData(DesignMeasure.Smear, false)]
    [InlineData(DesignMeasure.Depth, true)]
    [InlineData(DesignMeasure.Wind, true)]
    [InlineData(DesignMeasure.Cards, true)]
    public void A_photographer_wants_more_of_one_measure_and_less_of_another(DesignMeasure measure, bool more)
    {
        var (small, large) = (Only(measure, 1), Only(measure, 2));

        large.Beats(small, [measure]).Should().Be(more);
        small.Beats(large, [measure]).Should().Be(!more);
        small.Beats(small, [measure]).Should().BeFalse("what is as good beats nothing");
        large.Keep(new DesignLimit(measure, 1.5, "")).Should().Be(more);
        small.Keep(new DesignLimit(measure, 1, "")).Should().BeTrue("a limit may be reached");
    }

    private static DesignFigures Only(DesignMeasure measure, double amount) => new([.. DesignFigures.Measures.Select(other => other == measure ? amount : (double?)null)]);
}
