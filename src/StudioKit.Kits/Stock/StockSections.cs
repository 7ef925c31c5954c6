using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;
using UnitsNet;

namespace StudioKit.Kits.Stock;

/// <summary>Keys of the pipe and sheets that the studio is cut from.</summary>
internal static class StockSections
{
    public static readonly Section<StockLengthSpec> StockLength = new Section<StockLengthSpec>(
        "stock-length", "A stock length of pipe.", new() { Length = Length.Zero })
        .Required("length", Kinds.Length, "Length.", (stock, value) => stock with { Length = (Length)value! }, "1 cm", "20 m")
        .Optional("price", Kinds.Price, "Price of one; 0 for an offcut on hand.", (stock, value) => stock with { Price = (decimal)value! }, stock => stock.Price, "0", "100000")
        .Free("count", Kinds.Count, "How many there are; else as many as needed.", (stock, value) => stock with { Count = (int)value! }, "1", "10000");

    public static readonly Section<StockSheetSpec> StockSheet = new Section<StockSheetSpec>(
        "stock-sheet", "A stock sheet.", new() { Width = Length.Zero, Height = Length.Zero })
        .Optional("material", Kinds.Name, "Material, matched with the panel's.", (stock, value) => stock with { Material = (string)value! }, stock => stock.Material)
        .Required("size", Kinds.SheetSize, "Both sides, e.g. '1000 mm x 500 mm'.",
            (stock, value) => stock with { Width = ((Size)value!).First, Height = ((Size)value!).Second }, "1 cm", "10 m")
        .Optional("price", Kinds.Price, "Price of one; 0 for a remnant on hand.", (stock, value) => stock with { Price = (decimal)value! }, stock => stock.Price, "0", "100000")
        .Free("count", Kinds.Count, "How many there are; else as many as needed.", (stock, value) => stock with { Count = (int)value! }, "1", "10000");

    public static readonly Section<StockSpec> Stock = new Section<StockSpec>("stock", "Pipe lengths and sheets on hand or to buy.", new())
        .Optional("currency", Kinds.Currency, "Currency of every price.", (stock, value) => stock with { Currency = (string)value! }, stock => stock.Currency)
        .Optional("kerf", Kinds.Length, "Width of the saw cut in pipe.", (stock, value) => stock with { Kerf = (Length)value! }, stock => stock.Kerf, "0 mm", "20 mm")
        .Optional("sheet-kerf", Kinds.Length, "Width of the cut in sheet.", (stock, value) => stock with { SheetKerf = (Length)value! }, stock => stock.SheetKerf, "0 mm", "20 mm")
        .Optional("trim", Kinds.Length, "Cut off one end of every stock length to square it.", (stock, value) => stock with { Trim = (Length)value! }, stock => stock.Trim, "0 mm", "200 mm")
        .Optional("studios", Kinds.Count, "How many studios are built at once.", (stock, value) => stock with { Studios = (int)value! }, stock => stock.Studios, "1", "1000")
        .Values("offcuts", Kinds.Length, "Offcuts of pipe on hand, which cost nothing.",
            (stock, value) => stock with { Offcuts = [.. value.Cast<Length>()] }, _ => [], "1 cm", "20 m")
        .Free("clip-price", Kinds.Price, "Price of one clip that holds the panel to a rail.", (stock, value) => stock with { ClipPrice = (decimal)value! }, "0", "100000")
        .Free("pad-price", Kinds.Price, "Price of one pad between rail and panel.", (stock, value) => stock with { PadPrice = (decimal)value! }, "0", "100000")
        .Free("foot-price", Kinds.Price, "Price of one foot: screw, two nuts and a rubber tip.", (stock, value) => stock with { FootPrice = (decimal)value! }, "0", "100000")
        .Free("pin-price", Kinds.Price, "Price of one pin through fitting and pipe.", (stock, value) => stock with { PinPrice = (decimal)value! }, "0", "100000")
        .Free("peg-price", Kinds.Price, "Price of one ground peg.", (stock, value) => stock with { PegPrice = (decimal)value! }, "0", "100000")
        .Many("lengths", StockLength, "Stock lengths of pipe; else one of 3 m, as many as needed.", (stock, value) => stock with { Lengths = value })
        .Many("sheets", StockSheet, "Stock sheets.", (stock, value) => stock with { Sheets = value });
}
