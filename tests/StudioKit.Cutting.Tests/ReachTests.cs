using StudioKit.Cutting.Bars;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Tests;

public sealed class ReachTests
{
    /// <summary>Hand arithmetic: 3 + 3 + 4 buys 60 + 60 + 90; nothing longer costs at most 10.</summary>
    [Theory]
    [InlineData(2, 0)]
    [InlineData(3, 60)]
    [InlineData(4, 90)]
    [InlineData(5, 90)]
    [InlineData(6, 120)]
    [InlineData(7, 150)]
    [InlineData(10, 210)]
    public void A_budget_reaches_as_far_as_its_best_purchase(long budget, long length) =>
        Reach.Of([new BarStock(0, 60, 3, 99), new BarStock(1, 90, 4, 99)], 10, 1000)!.For(budget).Should().Be(length);

    [Fact]
    public void Nothing_is_reached_where_nothing_is_for_sale() => Reach.Of([], 10, 1000)!.For(10).Should().Be(0);
}
