namespace StudioKit.Kits.Quantities;

/// <summary>Regular expressions that tell an editor the forms of a value; the reader itself uses none.</summary>
internal static class Patterns
{
    public const string Number = @"[+\-−]?\s?(\d+(\.\d*)?|\.\d+|[½⅓⅔¼¾⅛⅜⅝⅞])([eE][+\-]?\d+)?(\s*[½⅓⅔¼¾⅛⅜⅝⅞]|/\d+(\.\d+)?|\s+\d+/\d+)?";
    public const string Uncertainty = @"(\s*(±|\+/-)\s*\S.*)?";
    public const string FNumber = @"[fF]/?\s?" + Number;
    public const string Stops = Number + @"(\s?stops?)?";
    public const string Power = OnePower + @"(\s*\(" + OnePower + @"\))?";
    private const string OnePower = Number + @"(\s*[+\-−]\s?" + Stops + ")?";
    public const string Iso = @"([iI][sS][oO]\s?)?" + Number + @"(\s?[iI][sS][oO])?";
    public const string Magnification = Number + @"(\s?[x×]|\s?:\s?" + Number + ")?";
    public const string Times = @"\s*[x×]\s*";
    public const string To = @"(\s+to\s+|\s*(–|\.\.|-)\s*)";

    public static string Quantity(UnitDimension dimension)
    {
        var one = $"{Number}\\s*({Symbols(dimension)})";
        return dimension.Adds ? $"{one}(\\s*{one})*" : one;
    }

    public static string Sizes(int count) =>
        string.Join(Times, Enumerable.Repeat($"{Number}\\s*({Symbols(UnitDimension.Length)})?", count));

    public static string GuideNumber => $"([gG][nN]\\s*[:=]?\\s*{Number}.*|{Quantity(UnitDimension.Length)}(\\s*(/|@|\\(|at\\s).*)?|{Number}\\s*(@|\\(|at\\s).*)";

    public static string Wind => $"({Quantity(UnitDimension.Speed)}|(Beaufort|Bft)\\s*\\d+|\\d+\\s*(Beaufort|Bft))";

    public static string ExposureValue => $"(EV\\s*{Number}|{Number}\\s*EV|{Quantity(UnitDimension.Illuminance)}|{SceneText.Pattern})";

    private static string Symbols(UnitDimension dimension) => string.Join('|', UnitTable.All
        .Where(unit => unit.Dimension == dimension)
        .OrderByDescending(unit => unit.Symbol.Length)
        .Select(unit => Escape(unit.Symbol)));

    private static string Escape(string symbol) => symbol
        .Replace("^", "\\^", StringComparison.Ordinal)
        .Replace("(", "\\(", StringComparison.Ordinal)
        .Replace(")", "\\)", StringComparison.Ordinal);
}
