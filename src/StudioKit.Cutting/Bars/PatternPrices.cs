namespace StudioKit.Cutting.Bars;

/// <summary>What the relaxed job would pay for one more piece or for one more bar of a counted stock.</summary>
/// <param name="Piece">Worth of a piece of each length [10⁻⁶ tick]; ≥ 0.</param>
/// <param name="Stock">What scarcity adds to the price of each stock, as a number ≤ 0 [10⁻⁶ tick].</param>
/// <param name="Bound">Cost that no plan can be below [10⁻⁶ tick].</param>
internal sealed record PatternPrices(long[] Piece, long[] Stock, decimal Bound)
{
    /// <summary>Parts of one tick that prices are counted in.</summary>
    public const long Scale = 1_000_000;

    /// <summary>The bound in whole ticks, as every plan costs whole ticks.</summary>
    public long WholeBound => (long)Math.Ceiling(Bound / Scale);
}
