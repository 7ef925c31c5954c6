using System.Globalization;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The part of the plan report that says which figures of the kit were put right by readings.</summary>
internal static class CorrectionSection
{
    public static IEnumerable<Block> Of(MeasuredCorrections corrections)
    {
        yield return new Heading("Measured corrections", 2);
        yield return new Paragraph(string.Create(
            CultureInfo.InvariantCulture, $"Readings of {corrections.Date:yyyy-MM-dd} put these figures of the kit right; everything in this plan is made with them."));
        yield return new Table(
            [
                new Column("Figure"), new Column("In the kit", ColumnKind.Decimal), new Column("Corrected", ColumnKind.Decimal), new Column("Unit"),
                new Column("Correction, stops", ColumnKind.Decimal), new Column("±", ColumnKind.Decimal),
            ],
            [.. corrections.Values.Select(value => new TableRow(
                [
                    value.Quantity, MeasureFormat.ThreeDigits(value.Before), MeasureFormat.ThreeDigits(value.After), value.Unit,
                    value.Correction.ToString(), value.PlusMinus.Value.ToString("0.00", CultureInfo.InvariantCulture),
                ]))]);
        if (corrections.DisagreeingReadings.Count > 0)
        {
            yield return new Paragraph("Readings that disagreed with the others: " + string.Join(", ", corrections.DisagreeingReadings) + ".");
        }
    }
}
