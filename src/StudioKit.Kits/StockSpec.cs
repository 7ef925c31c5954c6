using UnitsNet;

namespace StudioKit.Kits;

/// <summary>Pipe lengths and sheets on hand or to buy.</summary>
public sealed record StockSpec
{
    /// <summary>Currency of every price, as its three-letter ISO 4217 code.</summary>
    public string Currency { get; init; } = "EUR";

    /// <summary>Width of the saw cut in pipe.</summary>
    public Length Kerf { get; init; } = Length.FromMillimeters(2);

    /// <summary>Width of the cut in sheet.</summary>
    public Length SheetKerf { get; init; } = Length.FromMillimeters(3);

    /// <summary>Cut off one end of every stock length to square it.</summary>
    public Length Trim { get; init; } = Length.Zero;

    /// <summary>Stock lengths of pipe; one 3 m length, as many as needed, where the kit gives none.</summary>
    public IReadOnlyList<StockLengthSpec> Lengths { get; init; } = [];

    /// <summary>Stock sheets.</summary>
    public IReadOnlyList<StockSheetSpec> Sheets { get; init; } = [];
}
