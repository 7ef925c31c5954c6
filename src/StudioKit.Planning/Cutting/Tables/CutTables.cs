namespace StudioKit.Planning.Cutting.Tables;

/// <summary>Reads pieces and stock from comma-separated tables, as people keep them in a spreadsheet.</summary>
public static class CutTables
{
    /// <summary>Bytes that a table may have at most [1]; some hundred times what a lavish cut list needs.</summary>
    public const int MostBytes = 2_000_000;

    /// <summary>Pieces that a table may ask for in all [1].</summary>
    public const int MostPieces = 20_000;

    /// <summary>Reads pieces to be cut from bars: <c>label,length,count</c>, lengths with their unit.</summary>
    /// <param name="file">The file's name, for the diagnostics.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The pieces, or what is wrong with the table.</returns>
    public static CutTable<BarPiece> BarPieces(string file, string text) => TableReader.Read(
        file,
        text,
        ["label", "length"],
        ["count"],
        row => new BarPiece(row.Label(row.Text("length")), row.Length("length"), row.Pieces()));

    /// <summary>Reads bars: <c>length,price,count</c>; an empty price is 0, an empty count as many as needed.</summary>
    /// <param name="file">The file's name, for the diagnostics.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The bars, or what is wrong with the table.</returns>
    public static CutTable<StockBar> Bars(string file, string text) => TableReader.Read(
        file,
        text,
        ["length"],
        ["price", "count", "label"],
        row => new StockBar(row.Label(row.Text("length")), row.Length("length"), row.Price(), row.Count(0)));

    /// <summary>Reads pieces to be cut from sheets: <c>label,width,height,count,turn</c>; <c>no</c> under turn keeps the grain.</summary>
    /// <param name="file">The file's name, for the diagnostics.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The pieces, or what is wrong with the table.</returns>
    public static CutTable<SheetPiece> SheetPieces(string file, string text) => TableReader.Read(
        file,
        text,
        ["label", "width", "height"],
        ["count", "turn"],
        row => new SheetPiece(
            row.Label(SizeText(row)), row.Length("width"), row.Length("height"), row.Pieces(), row.MayTurn()));

    /// <summary>Reads sheets: <c>width,height,price,count</c>; an empty price is 0, an empty count as many as needed.</summary>
    /// <param name="file">The file's name, for the diagnostics.</param>
    /// <param name="text">Its text.</param>
    /// <returns>The sheets, or what is wrong with the table.</returns>
    public static CutTable<StockSheet> Sheets(string file, string text) => TableReader.Read(
        file,
        text,
        ["width", "height"],
        ["price", "count", "label"],
        row => new StockSheet(row.Label(SizeText(row)), row.Length("width"), row.Length("height"), row.Price(), row.Count(0)));

    private static string SizeText(TableReader row) => $"{row.Text("width")} x {row.Text("height")}";
}
