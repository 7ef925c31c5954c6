using System.Globalization;
using StudioKit.Kits;
using StudioKit.Planning.Tables;

namespace StudioKit.Planning.Exploring;

/// <summary>Designs as a table for a spreadsheet: a row for the kit as it is written, then one for each that is shown.</summary>
public static class DesignTable
{
    /// <summary>The table, its first row with the columns' names.</summary>
    /// <param name="result">The search.</param>
    public static string Of(DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        var header = CsvText.Row(["number", "design", .. DesignFigures.Measures.Select(measure => MemberText.Of(measure)), .. result.Space.Choices.Select(choice => choice.Name)]);
        return string.Concat(result.Shown.Select(design => Row(result, Number(design.Number), design.Code, design.Figures)).Prepend(Row(result, "", result.Space.Own, result.Own.Figures)).Prepend(header));
    }

    private static string Row(DesignSearchResult result, string number, DesignCode code, DesignFigures? figures) => CsvText.Row(
    [
        number, code.ToString(), .. DesignFigures.Measures.Select(measure => figures?[measure] is { } amount ? Number(amount) : ""), .. result.Space.OptionsOf(code).Select(option => option.Name),
    ]);

    private static string Number(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
