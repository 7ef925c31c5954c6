using System.Globalization;
using StudioKit.Field.Log.Release;
using StudioKit.Planning.Tables;

namespace StudioKit.Field.Log.Archive;

/// <summary>One row of an archive's file, read by the short names of its terms.</summary>
internal sealed class ArchiveRow(IReadOnlyDictionary<string, int> columns, IReadOnlyList<CsvField> fields)
{
    /// <summary>A field as text; empty where the archive does not have the term.</summary>
    public string this[string term] => columns.TryGetValue(term, out var column) && (uint)column < (uint)fields.Count ? fields[column].Text : "";

    public static DateTimeOffset Moment(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    /// <summary>A day, or a moment; a moment without a zone is universal time.</summary>
    public static FieldDate Date(string text) => FieldDate.TryRead(text, _ => TimeSpan.Zero, out var date)
        ? date
        : throw new FormatException($"'{text}' is not a date; write it as 2026-05-09 or 2026-05-09T14:00+01:00.");

    public double? Number(string term) => this[term].Length == 0 ? null : double.Parse(this[term], NumberStyles.Float, CultureInfo.InvariantCulture);

    public FieldDate? MaybeDate(string term) => this[term].Length == 0 ? null : Date(this[term]);

    public IReadOnlyList<string> Names(string term) => this[term].Split(RecordText.ListSeparator, StringSplitOptions.RemoveEmptyEntries);
}
