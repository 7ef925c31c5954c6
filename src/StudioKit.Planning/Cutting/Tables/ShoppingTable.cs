using System.Globalization;
using StudioKit.Planning.Tables;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>A shopping list as a comma-separated table, one row a line.</summary>
public static class ShoppingTable
{
    /// <summary>The list of a frame; a price that nobody gave stays empty.</summary>
    /// <param name="frame">The frame.</param>
    /// <returns>The table with its head.</returns>
    public static string Of(FramePlan frame)
    {
        ArgumentNullException.ThrowIfNull(frame);
        return CsvText.Row("item", "count", "priceEach", "price", "currency")
            + string.Concat(frame.Shopping.Select(line => CsvText.Row(
                line.Item, line.Count.ToString(CultureInfo.InvariantCulture), Money(line.PriceEach), Money(line.Total), frame.Currency)));
    }

    private static string Money(decimal? price) => price?.ToString(CultureInfo.InvariantCulture) ?? "";
}
