using System.Globalization;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Planning.Tables;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>A shopping list as a comma-separated table, one row a line.</summary>
public static class ShoppingTable
{
    /// <summary>The list of a workshop; a price that nobody gave stays empty.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <returns>The table with its head.</returns>
    public static string Of(Workshop workshop)
    {
        ArgumentNullException.ThrowIfNull(workshop);
        return CsvText.Row("item", "count", "priceEach", "price", "currency", "from", "usedAt")
            + string.Concat(workshop.Shopping.Select(line => CsvText.Row(
                line.Item, line.Count.ToString(CultureInfo.InvariantCulture), Money(line.PriceEach), Money(line.Total), workshop.Currency,
                line.Tool is not null ? "tool" : line.IsFromTheHouse ? "house" : "shop", line.Hardware is { } part ? HardwareText.Where(part) : "")));
    }

    private static string Money(decimal? price) => price?.ToString(CultureInfo.InvariantCulture) ?? "";
}
