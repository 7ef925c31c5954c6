using System.Globalization;
using StudioKit.Kits;

namespace StudioKit.Field.Log.Rows;

/// <summary>The cells that tell of an animal once.</summary>
internal static class SubjectCells
{
    private const string Cross = "x";
    private static readonly (string Word, string Short)[] Sexes = [("female", "f"), ("male", "m")];

    public static FieldSubject Read(EnteredRow row, FieldSubject subject) => subject with
    {
        VernacularName = row[RowColumns.Animal] == RowWriter.Unknown ? "" : row[RowColumns.Animal],
        ScientificName = row[RowColumns.Scientific],
        IdentificationQualifier = row[RowColumns.Doubt],
        IndividualCount = Count(row),
        Sex = Sex(row[RowColumns.Sex]),
        LifeStage = row[RowColumns.Stage],
        HoldLimit = Limit(row),
        Sensitivity = Sensitivity(row),
        Remarks = row[RowColumns.Remarks],
    };

    /// <summary>A length in millimetres, as a number or with its unit; none where it is no length above nothing.</summary>
    public static double? Millimetres(string text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? Positive(number)
        : QuantityText.TryLength(text, out var length, out _) ? Positive(Math.Round(length.Millimeters, 6))
        : null;

    /// <summary>A sex in full, of its first letter or as it is.</summary>
    public static string Sex(string text) => Array.Find(Sexes, sex => sex.Short == text).Word ?? text;

    private static double? Positive(double number) => double.IsFinite(number) && number > 0 ? number : null;

    private static int? Count(EnteredRow row)
    {
        if (!row.Has(RowColumns.Count))
        {
            return null;
        }

        if (int.TryParse(row[RowColumns.Count], NumberStyles.None, CultureInfo.InvariantCulture, out var count))
        {
            return count;
        }

        row.Fault(RowColumns.Count, "FLD492", $"'{row[RowColumns.Count]}' is no count.", "Write it as 3.");
        return null;
    }

    private static TimeSpan? Limit(EnteredRow row)
    {
        if (!row.Has(RowColumns.Limit))
        {
            return null;
        }

        if (QuantityText.TryDuration(row[RowColumns.Limit], out var limit, out _) && limit.Seconds is > 0 and < 1e6)
        {
            return TimeSpan.FromSeconds(Math.Round(limit.Seconds));
        }

        row.Fault(RowColumns.Limit, "FLD492", $"'{row[RowColumns.Limit]}' is no time to hold an animal.", "Write it as 10 min.");
        return null;
    }

    private static PlaceSensitivity Sensitivity(EnteredRow row)
    {
        var text = row[RowColumns.Sensitive];
        if (text.Length == 0)
        {
            return PlaceSensitivity.Open;
        }

        // A cross on paper says no more than "secret".
        if (string.Equals(text, Cross, StringComparison.OrdinalIgnoreCase))
        {
            return PlaceSensitivity.Withheld;
        }

        foreach (var level in Enum.GetValues<PlaceSensitivity>().Where(level => string.Equals(level.ToString(), text, StringComparison.OrdinalIgnoreCase)))
        {
            return level;
        }

        row.Fault(
            RowColumns.Sensitive, "FLD492", $"'{row[RowColumns.Sensitive]}' does not say how much of its place may be told.",
            $"Write x, {string.Join(", ", Enum.GetNames<PlaceSensitivity>().Select(name => name.ToLowerInvariant()))}.");
        return PlaceSensitivity.Withheld;
    }
}
