namespace StudioKit.Planning.Studio;

/// <summary>A line of the shopping list.</summary>
/// <param name="Item">What to buy.</param>
/// <param name="Count">How many [1].</param>
/// <param name="PriceEach">Price of one [1]; 0 for what is on hand, none where the kit gives none.</param>
public sealed record ShoppingLine(string Item, int Count, decimal? PriceEach)
{
    /// <summary>Price of all of them [1].</summary>
    public decimal? Total => PriceEach * Count;
}
