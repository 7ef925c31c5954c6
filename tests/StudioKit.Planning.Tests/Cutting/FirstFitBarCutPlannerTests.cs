using StudioKit.Planning.Cutting;
using UnitsNet;

namespace StudioKit.Planning.Tests.Cutting;

public sealed class FirstFitBarCutPlannerTests
{
    private static readonly FirstFitBarCutPlanner Planner = new();

    /// <summary>Pieces per bar of one length are floor((L + k) / (l + k)), arithmetic of the kerf convention.</summary>
    [Theory]
    [InlineData(2400, 0, 300, 8, 1)]
    [InlineData(2400, 3, 300, 7, 1)]
    [InlineData(2400, 3, 300, 8, 2)]
    [InlineData(3000, 0, 1000, 10, 4)]
    [InlineData(3000, 3, 1000, 10, 5)]
    public void A_bar_loses_one_kerf_between_neighbouring_pieces(double stock, double kerf, double length, int count, int bars)
    {
        var plan = Planner.Plan(Job(stock, kerf, (length, count)));

        plan.TotalBars.Should().Be(bars);
        plan.Proof.ProvenOptimal.Should().BeTrue();
    }

    /// <summary>Plain sums: 1,000 mm less 10 mm squared off, kerf 3 mm after each piece of 200 mm, one stroke to square and one a piece.</summary>
    [Fact]
    public void Running_measures_on_a_bar_take_one_kerf_after_each_piece()
    {
        var bar = Planner.Plan(Job(1000, 3, (200, 3)) with { Trim = Length.FromMillimeters(10) }).Bars.Single();

        bar.Marks.Select(mark => (mark.Start.Millimeters, mark.End.Millimeters)).Should().Equal((0, 200), (203, 403), (406, 606));
        bar.Trim.Millimeters.Should().Be(10);
        bar.Offcut.Millimeters.Should().Be(381);
        bar.SawCuts.Should().Be(4);
    }

    /// <summary>
    /// Ten pieces of 300 mm and ten of 205 mm take 5,250 mm with a kerf of 10 mm each; the cheapest length costs 10 for 1,010 mm, kerf lent: 51.98 at least.
    /// Without the kerf it would be 50.
    /// </summary>
    [Fact]
    public void The_bound_of_a_proof_counts_the_kerf()
    {
        var plan = Planner.Plan(new BarCutRequest
        {
            Pieces = [new BarPiece("long", Length.FromMillimeters(300), 10), new BarPiece("short", Length.FromMillimeters(205), 10)],
            Stock = [new StockBar("whole", Length.FromMillimeters(1000), 10m), new StockBar("half", Length.FromMillimeters(500), 6m)],
            Kerf = Length.FromMillimeters(10),
        });

        plan.Proof.LowerBound.Should().BeGreaterThanOrEqualTo(51.9m).And.BeLessThanOrEqualTo(plan.Proof.Value);
    }

    /// <summary>Scholl N1C1W1_A: first-fit decreasing needs 25 bars, which is also the optimum (BPPLIB bounds file).</summary>
    [Fact]
    public void First_fit_meets_the_published_figure_of_Scholl_N1C1W1_A()
    {
        int[] lengths =
        [
            99, 99, 96, 96, 92, 92, 91, 88, 87, 86, 85, 76, 74, 72, 69, 67, 67, 62, 61, 56, 52, 51, 49, 46, 44,
            42, 40, 40, 33, 33, 30, 30, 29, 28, 28, 27, 25, 24, 23, 22, 21, 20, 17, 14, 13, 11, 10, 7, 7, 3,
        ];
        var plan = Planner.Plan(Job(100, 0, [.. lengths.Select(length => ((double)length, 1))]));

        plan.TotalBars.Should().Be(25);
        plan.Proof.LowerBound.Should().Be(25);
    }

    /// <summary>BPPLib.jl PM_u020_04: first-fit decreasing needs 8 bars where 7 are enough, and must not claim otherwise.</summary>
    [Fact]
    public void A_plan_that_is_not_the_best_does_not_say_it_is()
    {
        int[] lengths = [96, 93, 91, 69, 67, 64, 62, 54, 51, 49, 47, 46, 44, 35, 32, 29, 27, 25, 24, 23];
        var plan = Planner.Plan(Job(150, 0, [.. lengths.Select(length => ((double)length, 1))]));

        plan.TotalBars.Should().Be(8);
        plan.Proof.ProvenOptimal.Should().BeFalse();
        plan.Proof.Gap.Should().Be(1m / 8);
        plan.Proof.Method.Should().StartWith("first-fit");
    }

    [Fact]
    public void Every_plan_keeps_every_piece_and_counts_every_kerf() =>
        CutJobs.Bars.Sample(job => CutPlanChecks.Holds(job, Planner.Plan(job)));

    [Fact]
    public void A_piece_longer_than_all_stock_is_named()
    {
        var plan = Planner.Plan(Job(1000, 3, (1001, 2), (400, 1)));

        plan.Complete.Should().BeFalse();
        plan.Uncut.Should().ContainSingle().Which.Should().Be(new UncutPiece("P0", Length.FromMillimeters(1001), null, 2, UncutReason.TooLarge));
        plan.Proof.Gap.Should().BeNull();
    }

    /// <summary>Whole tenths of a millimetre are counted up to a kilometre; nobody sells more.</summary>
    [Fact]
    public void A_piece_of_over_a_kilometre_is_named_like_any_that_is_too_long()
    {
        var plan = Planner.Plan(Job(5_000_000, 3, (2_000_001.23, 2), (400, 1)));

        plan.Uncut.Should().ContainSingle().Which.Should().Be(new UncutPiece("P0", Length.FromMillimeters(2_000_001.3), null, 2, UncutReason.TooLarge));
        plan.Bars.Should().ContainSingle();
    }

    [Fact]
    public void A_piece_for_which_stock_runs_out_is_named()
    {
        var plan = Planner.Plan(Job(1000, 3, (600, 3)) with { Stock = [new("S", Length.FromMillimeters(1000), 1, 2)] });

        plan.Uncut.Should().ContainSingle().Which.Should().Be(new UncutPiece("P0", Length.FromMillimeters(600), null, 1, UncutReason.NotEnoughStock));
    }

    [Fact]
    public void Offcuts_on_hand_are_cut_before_new_stock_is_bought()
    {
        var plan = Planner.Plan(Job(3000, 3, (400, 2)) with
        {
            Stock =
            [
                new("new", Length.FromMillimeters(3000), 7.5m),
                new("offcut", Length.FromMillimeters(850), 0, 3),
            ],
        });

        plan.Bars.Should().ContainSingle().Which.StockLabel.Should().Be("offcut");
        plan.TotalCost.Should().Be(0);
        plan.StockForNextTime.Should().ContainSingle().Which.Count.Should().Be(2);
    }

    [Fact]
    public void Inch_lengths_never_come_out_short()
    {
        var plan = Planner.Plan(Job(3000, 3, (12.0625 * 25.4, 4)));

        plan.Bars[0].Marks[0].End.Millimeters.Should().BeGreaterThanOrEqualTo(12.0625 * 25.4);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(-5, 1)]
    [InlineData(double.NaN, 1)]
    [InlineData(double.PositiveInfinity, 1)]
    [InlineData(100, 0)]
    public void An_impossible_piece_is_refused(double length, int count)
    {
        var act = () => Planner.Plan(Job(1000, 3, (length, count)));

        act.Should().Throw<ArgumentException>();
    }

    private static BarCutRequest Job(double stock, double kerf, params (double Length, int Count)[] pieces) => new()
    {
        Pieces = [.. pieces.Select((piece, i) => new BarPiece($"P{i}", Length.FromMillimeters(piece.Length), piece.Count))],
        Stock = [new StockBar("S", Length.FromMillimeters(stock), 1)],
        Kerf = Length.FromMillimeters(kerf),
    };
}
