using UnitsNet;

namespace StudioKit.Kits.Stock;

/// <summary>A stock sheet.</summary>
public sealed record StockSheetSpec
{
    /// <summary>Material, matched with the panel's.</summary>
    public string Material { get; init; } = "white opal acrylic";

    /// <summary>First side; with <see cref="Height"/> the file's <c>size: 1000 mm x 500 mm</c>.</summary>
    public required Length Width { get; init; }

    /// <summary>Second side.</summary>
    public required Length Height { get; init; }

    /// <summary>Price of one in the stock's currency [1]; 0 for a remnant on hand.</summary>
    public decimal Price { get; init; }

    /// <summary>How many there are [1]; as many as needed where the kit gives none.</summary>
    public int? Count { get; init; }
}
