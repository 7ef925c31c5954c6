namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Prices as whole multiples of one tick, the largest sum of money that divides them all.</summary>
/// <param name="Ticks">What each stock costs [ticks]; 1 each where none has a price.</param>
/// <param name="Tick">Value of one tick: money, or one bar or sheet.</param>
/// <param name="Objective">What the ticks count.</param>
internal sealed record StockPrices(long[] Ticks, decimal Tick, CutObjective Objective)
{
    private const decimal FinestPart = 10_000;
    private const decimal Highest = 1_000_000_000;

    public static StockPrices From(IReadOnlyList<decimal> prices)
    {
        if (prices.Any(price => price is < 0 or > Highest))
        {
            throw new ArgumentOutOfRangeException(nameof(prices), "A price must lie between 0 and 1,000,000,000.");
        }

        var parts = prices.Select(price => (long)Math.Ceiling(price * FinestPart)).ToArray();
        var divisor = parts.Aggregate(0L, GreatestCommonDivisor);
        return divisor == 0
            ? new StockPrices([.. parts.Select(_ => 1L)], 1, CutObjective.Count)
            : new StockPrices([.. parts.Select(part => part / divisor)], divisor / FinestPart, CutObjective.Cost);
    }

    private static long GreatestCommonDivisor(long a, long b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
