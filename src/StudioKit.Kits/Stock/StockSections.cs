using StudioKit.Kits.Description;
using UnitsNet;

namespace StudioKit.Kits.Stock;

/// <summary>Keys of the pipe and sheets that the studio is cut from.</summary>
internal static class StockSections
{
    public static readonly Section<StockLengthSpec> StockLength = new Section<StockLengthSpec>(
        "stock-length", "A stock length of pipe.", new() { Length = Length.Zero })
        .Required("length", "Length.", "1 cm", "20 m").Length((stock, value) => stock with { Length = value })
        .Optional("price", "Price of one; 0 for an offcut on hand.", "0", "100000")
            .Price((stock, value) => stock with { Price = value }, stock => stock.Price)
        .Optional("count", "How many there are; else as many as needed.", "1", "10000").Count((stock, value) => stock with { Count = value });

    public static readonly Section<StockSheetSpec> StockSheet = new Section<StockSheetSpec>(
        "stock-sheet", "A stock sheet.", new() { Width = Length.Zero, Height = Length.Zero })
        .Optional("material", "Material, matched with the panel's.").Name((stock, value) => stock with { Material = value }, stock => stock.Material)
        .Required("size", "Both sides, e.g. '1000 mm x 500 mm'.", "1 cm", "10 m")
            .SheetSize((stock, value) => stock with { Width = value.First, Height = value.Second })
        .Optional("price", "Price of one; 0 for a remnant on hand.", "0", "100000")
            .Price((stock, value) => stock with { Price = value }, stock => stock.Price)
        .Optional("count", "How many there are; else as many as needed.", "1", "10000").Count((stock, value) => stock with { Count = value });

    public static readonly Section<StockSpec> Stock = new Section<StockSpec>("stock", "Pipe lengths and sheets on hand or to buy.", new())
        .Optional("currency", "Currency of every price.").Currency((stock, value) => stock with { Currency = value }, stock => stock.Currency)
        .Optional("kerf", "Width of the saw cut in pipe.", "0 mm", "20 mm").Length((stock, value) => stock with { Kerf = value }, stock => stock.Kerf)
        .Optional("sheet-kerf", "Width of the cut in sheet.", "0 mm", "20 mm")
            .Length((stock, value) => stock with { SheetKerf = value }, stock => stock.SheetKerf)
        .Optional("trim", "Cut off one end of every stock length to square it.", "0 mm", "200 mm")
            .Length((stock, value) => stock with { Trim = value }, stock => stock.Trim)
        .Optional("studios", "How many studios are built at once.", "1", "1000")
            .Count((stock, value) => stock with { Studios = value }, stock => stock.Studios)
        .Optional("offcuts", "Offcuts of pipe on hand, which cost nothing.", "1 cm", "20 m").Lengths((stock, value) => stock with { Offcuts = value })
        .Optional("clip-price", "Price of one clip that holds the panel to a rail.", "0", "100000")
            .Price((stock, value) => stock with { ClipPrice = value })
        .Optional("pad-price", "Price of a metre of the pad, or of the ledge, that the panel rests on.", "0", "100000").Price((stock, value) => stock with { PadPrice = value })
        .Optional("foot-price", "Price of one foot: screw, two nuts and a rubber tip.", "0", "100000")
            .Price((stock, value) => stock with { FootPrice = value })
        .Optional("pin-price", "Price of one pin through fitting and pipe.", "0", "100000").Price((stock, value) => stock with { PinPrice = value })
        .Optional("peg-price", "Price of one ground peg.", "0", "100000").Price((stock, value) => stock with { PegPrice = value })
        .Optional("cord-price", "Price of a metre of cord.", "0", "100000").Price((stock, value) => stock with { CordPrice = value })
        .Optional("clamp-price", "Price of one clamp or ball joint that holds a flash.", "0", "100000").Price((stock, value) => stock with { ClampPrice = value })
        .Optional("bag-price", "Price of one bag for ballast.", "0", "100000").Price((stock, value) => stock with { BagPrice = value })
        .Many("lengths", StockLength, "Stock lengths of pipe; else one of 3 m, as many as needed.", (stock, value) => stock with { Lengths = value })
        .Many("sheets", StockSheet, "Stock sheets.", (stock, value) => stock with { Sheets = value });
}
