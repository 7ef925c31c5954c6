using StudioKit.Cutting.Bars;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Kernel;
using UnitsNet;

namespace StudioKit.Cutting.Tests;

public sealed class DirectPackingTests
{
    private const int Steps = 10_000_000;

    [Fact]
    public void A_budget_suffices_exactly_from_the_least_cost_on_that_trying_everything_finds() =>
        Jobs.Sample(
            request =>
            {
                var job = BarJob.From(request);
                if (job.TooLong.Count > 0 || TriedBars.LeastCost(request) is not { } cost)
                {
                    return true;
                }

                var least = (long)(cost / job.Prices.Tick);
                var packing = DirectPacking.For(job, PiecePrices.Of(job), least + 20, Steps)!;

                // What was learnt from too small a budget must not spoil a larger one, nor the other way round.
                return (least == 0 || packing.Within(least - 1, default).ProvenImpossible)
                    && packing.Within(least + 20, default).Bars is not null
                    && packing.Within(least, default).Bars is { } bars
                    && bars.Sum(bar => job.Stock[bar.Stock].Cost) <= least;
            },
            iter: 400);

    [Fact]
    public void Prices_of_pieces_make_no_bar_pay_that_is_bought_at_will() =>
        Jobs.Sample(request =>
        {
            var job = BarJob.From(request);
            var prices = PiecePrices.Of(job);
            return job.Stock.Select((bar, j) => (bar, j)).All(stock =>
                BestPattern.Find(job, stock.bar.Capacity, prices.Piece).Worth <= (stock.bar.Cost * PatternPrices.Scale) + prices.Gain[stock.j]);
        });

    [Fact]
    public void Nothing_is_proven_once_the_steps_are_used_up()
    {
        var job = BarJob.From(PublishedBarJobs.FalkenauerT60);
        var answer = DirectPacking.For(job, PiecePrices.Of(job), 20, steps: 100)!.Within(20, default);

        answer.Bars.Should().BeNull();
        answer.ProvenImpossible.Should().BeFalse();
    }

    // Few lengths in several copies, some bars counted and some not, so that the same rest is met again under other budgets.
    private static readonly Gen<BarCutRequest> Jobs =
        from lengths in Gen.Select(Gen.Int[2, 12], Gen.Int[1, 3]).Array[1, 4]
        where lengths.Sum(length => length.Item2) <= 8
        from stock in Gen.Select(Gen.Int[8, 22], Gen.Int[0, 9], Gen.Int[0, 2]).Array[1, 4]
        where stock.Any(bar => bar.Item2 > 0)
        from kerf in Gen.Int[0, 1]
        select new BarCutRequest
        {
            Pieces = [.. lengths.Select((length, i) => new BarPiece($"P{i}", Length.FromMillimeters(length.Item1), length.Item2))],
            Stock =
            [
                .. stock.Select((bar, i) =>
                    new StockBar($"S{i}", Length.FromMillimeters(bar.Item1), bar.Item2, bar.Item3 == 0 ? null : bar.Item3)),
            ],
            Kerf = Length.FromMillimeters(kerf),
        };
}
