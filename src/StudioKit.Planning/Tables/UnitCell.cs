using System.Globalization;
using UnitsNet;

namespace StudioKit.Planning.Tables;

/// <summary>A cell of a table for a spreadsheet, or a column's head, that is written in the units of the scope; where both are told it makes two columns beside each other.</summary>
/// <param name="Metric">In metric units, or what has no unit at all.</param>
/// <param name="Inches">In inches or ounces; none for what has no unit.</param>
public readonly record struct UnitCell(string Metric, string? Inches)
{
    /// <summary>A cell without a unit.</summary>
    /// <param name="text">What stands in it.</param>
    public static implicit operator UnitCell(string text) => FromString(text);

    /// <summary>A cell without a unit.</summary>
    /// <param name="text">What stands in it.</param>
    public static UnitCell FromString(string text) => new(text, null);

    /// <summary>Head of a column of lengths.</summary>
    /// <param name="name">What the lengths are.</param>
    public static UnitCell LengthHead(string name) => new($"{name}Mm", $"{name}In");

    /// <summary>Head of a column of masses.</summary>
    /// <param name="name">What the masses are.</param>
    public static UnitCell MassHead(string name) => new($"{name}G", $"{name}Oz");

    /// <summary>A length, in inches to the thousandth; empty where there is none.</summary>
    /// <param name="length">The length.</param>
    /// <param name="format">How its millimetres are written.</param>
    public static UnitCell Of(Length? length, string format) => new(Number(length?.Millimeters, format), Number(length?.Inches, "0.###"));

    /// <summary>A mass in grams or ounces, to the hundredth.</summary>
    /// <param name="mass">The mass.</param>
    public static UnitCell Of(Mass mass) => new(Number(mass.Grams, "0.##"), Number(mass.Ounces, "0.##"));

    /// <summary>Writes one row in the units of the scope.</summary>
    /// <param name="cells">The cells, or the heads.</param>
    /// <exception cref="ArgumentNullException">There are no cells.</exception>
    public static string Row(params UnitCell[] cells)
    {
        ArgumentNullException.ThrowIfNull(cells);
        var units = PlanUnits.Current.Units;
        return CsvText.Row([.. cells.SelectMany(cell => (cell.Inches, units) switch
        {
            (null, _) or (_, TextUnits.Metric) => (string[])[cell.Metric],
            ({ } inches, TextUnits.Inches) => [inches],
            ({ } inches, _) => [cell.Metric, inches],
        })]);
    }

    private static string Number(double? value, string format) => value is { } number ? number.ToString(format, CultureInfo.InvariantCulture) : "";
}
