using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Stock;

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

    /// <summary>How many studios are built at once [1]; cut plan and shopping list are for all of them.</summary>
    public int Studios { get; init; } = 1;

    /// <summary>Offcuts of pipe on hand, which cost nothing and are used first.</summary>
    public ValueList<Length> Offcuts { get; init; } = [];

    /// <summary>Price of one clip that holds the panel to a rail [1]; none where the kit gives none.</summary>
    public decimal? ClipPrice { get; init; }

    /// <summary>Price of a metre of the pad, or of the ledge, that the panel rests on [1].</summary>
    public decimal? PadPrice { get; init; }

    /// <summary>Price of one foot: screw, two nuts and a rubber tip [1].</summary>
    public decimal? FootPrice { get; init; }

    /// <summary>Price of one pin through fitting and pipe [1].</summary>
    public decimal? PinPrice { get; init; }

    /// <summary>Price of one ground peg [1].</summary>
    public decimal? PegPrice { get; init; }

    /// <summary>Price of a metre of cord [1].</summary>
    public decimal? CordPrice { get; init; }

    /// <summary>Price of one clamp or ball joint that holds a flash [1].</summary>
    public decimal? ClampPrice { get; init; }

    /// <summary>Price of one bag for ballast [1].</summary>
    public decimal? BagPrice { get; init; }

    /// <summary>Stock lengths of pipe; one 3 m length, as many as needed, where the kit gives none.</summary>
    public ValueList<StockLengthSpec> Lengths { get; init; } = [];

    /// <summary>Stock sheets.</summary>
    public ValueList<StockSheetSpec> Sheets { get; init; } = [];
}
