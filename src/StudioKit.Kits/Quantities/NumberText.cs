using System.Globalization;

namespace StudioKit.Kits.Quantities;

/// <summary>Numbers with and without units, and the sentences for what can be wrong with them.</summary>
internal static class NumberText
{
    // Far beyond anything a kit measures, in any of the table's units (the stiffest modulus is some 1e12 Pa).
    private const double Largest = 1e15;

    /// <summary>Reads a number and its unit, or several that add up.</summary>
    public static Reading<double> Quantity(string text, UnitDimension dimension)
    {
        var cursor = new TextCursor(text);
        cursor.SkipSpaces();
        var sum = 0.0;
        var sign = 1.0;
        Unit? last = null;
        do
        {
            if (!cursor.TryNumber(out var number))
            {
                return NoNumber(text, cursor, dimension);
            }

            if (CheckUnit(text, ref cursor, dimension, last) is { } fault)
            {
                return fault;
            }

            var unit = UnitTable.At(text, cursor.Position, dimension)!;
            cursor.Position += unit.Symbol.Length;
            cursor.SkipSpaces();
            sign = last is null && number < 0 ? -1 : sign;
            sum += (last is null ? number : number * sign) * unit.Factor + unit.Offset;
            last = unit;
        }
        while (!cursor.AtEnd);

        return Sane(sum, text);
    }

    /// <summary>Reads a number that needs no unit.</summary>
    public static Reading<double> Bare(string text, string noun, string example)
    {
        var cursor = new TextCursor(text);
        cursor.SkipSpaces();
        if (!cursor.TryNumber(out var number))
        {
            return Reading<double>.Bad(WhyNoNumber(text, noun, out var hint), hint ?? $"Write for example '{example}'.");
        }

        cursor.SkipSpaces();
        if (!cursor.AtEnd)
        {
            return HasComma(text, cursor) ? Comma<double>(text)
                : Reading<double>.Bad($"'{text}' is not {noun}: '{cursor.Rest}' is left over.", $"Write for example '{example}'.");
        }

        return Sane(number, text);
    }

    /// <summary>Reads a whole number.</summary>
    public static Reading<int> Whole(string text) => Bare(text, "a whole number", "4").Then(number =>
        number == Math.Floor(number) && Math.Abs(number) <= int.MaxValue
            ? Reading<int>.Good((int)number)
            : Reading<int>.Bad($"'{text}' is not a whole number.", "Write for example '4'."));

    /// <summary>A number as people write it, with at most six decimals, or four significant digits where it is tiny.</summary>
    public static string Write(double value) =>
        value.ToString(Math.Abs(value) is 0 or >= 1e-3 ? "0.######" : "0.###e0", CultureInfo.InvariantCulture);

    private static Reading<double>? CheckUnit(string text, ref TextCursor cursor, UnitDimension dimension, Unit? last)
    {
        var numberEnd = cursor.Position;
        cursor.SkipSpaces();
        if (HasComma(text, cursor))
        {
            return Comma<double>(text);
        }

        if (cursor.AtEnd)
        {
            return NoUnit(text, text[..numberEnd], dimension);
        }

        var unit = UnitTable.At(text, cursor.Position, dimension);
        if (unit is null || unit.Dimension != dimension)
        {
            return unit is null ? UnknownUnit(text, cursor, dimension) : WrongUnit(text, unit, dimension);
        }

        return last is null || (dimension.Adds && unit.Factor < last.Factor)
            ? null
            : Reading<double>.Bad($"'{text}' is not {dimension.Noun}: '{unit.Symbol}' cannot follow '{last.Symbol}'.", $"Write for example '{dimension.Example}'.");
    }

    private static Reading<double> NoUnit(string text, string number, UnitDimension dimension) => Reading<double>.Bad(
        $"'{text}' has no unit; {dimension.Noun} needs one.", $"Did you mean '{text}{(dimension.Guess == "°" ? "" : " ")}{dimension.Guess}'?");

    private static Reading<double> UnknownUnit(string text, TextCursor cursor, UnitDimension dimension)
    {
        var word = cursor.Rest.Split(' ')[0];
        if (char.IsAsciiDigit(word[0]))
        {
            return Reading<double>.Bad($"'{text}' has two numbers in a row.", "Write digits without spaces between them, and a unit after the number.");
        }

        var recased = UnitTable.Recased(word, dimension);
        return Reading<double>.Bad(
            $"'{word}' is not a unit of {Bare(dimension)}.",
            recased is null ? $"Units known here: {Symbols(dimension)}." : $"Did you mean '{recased}'?");
    }

    private static Reading<double> WrongUnit(string text, Unit unit, UnitDimension dimension) => Reading<double>.Bad(
        $"'{text}' is {unit.Dimension.Noun}; {dimension.Noun} is needed.", $"Write for example '{dimension.Example}'.");

    private static Reading<double> NoNumber(string text, TextCursor cursor, UnitDimension dimension) =>
        HasComma(text, cursor)
            ? Comma<double>(text)
            : Reading<double>.Bad(WhyNoNumber(text, dimension.Noun, out var hint), hint ?? $"Write for example '{dimension.Example}'.");

    private static string WhyNoNumber(string text, string noun, out string? hint)
    {
        hint = null;
        var bare = text.Trim().TrimStart('.', '+', '-').ToUpperInvariant();
        if (bare.StartsWith("NAN", StringComparison.Ordinal) || bare.StartsWith("INF", StringComparison.Ordinal) || bare.StartsWith('∞'))
        {
            hint = "Every value must be a finite number.";
        }

        return text.Trim().Length == 0 ? $"There is no value here; {noun} is needed." : $"'{text}' is not {noun}.";
    }

    private static bool HasComma(string text, TextCursor cursor) =>
        cursor.Current == ',' && cursor.Position > 0 && char.IsAsciiDigit(text[cursor.Position - 1])
        && cursor.Position + 1 < text.Length && char.IsAsciiDigit(text[cursor.Position + 1]);

    private static Reading<T> Comma<T>(string text) => Reading<T>.Bad(
        $"'{text}' has a comma in its number.", $"Decimals take a point, and thousands no mark: '{text.Replace(',', '.')}'.");

    private static Reading<double> Sane(double value, string text) =>
        double.IsFinite(value) && Math.Abs(value) <= Largest
            ? Reading<double>.Good(value)
            : Reading<double>.Bad($"'{text}' is too large a number.", "No value in a kit is anywhere near it.");

    private static string Bare(UnitDimension dimension) => dimension.Noun[(dimension.Noun.IndexOf(' ', StringComparison.Ordinal) + 1)..];

    private static string Symbols(UnitDimension dimension) =>
        string.Join(", ", UnitTable.All.Where(unit => unit.Dimension == dimension).DistinctBy(unit => (unit.Factor, unit.Offset)).Select(unit => unit.Symbol));
}
