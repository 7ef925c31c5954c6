using System.Globalization;
using StudioKit.Field.Log.Release;

namespace StudioKit.Field.Log.Archive;

/// <summary>One row of an archive's file, read by the short names of its terms; what cannot be read is named with its place.</summary>
internal sealed class ArchiveRow(string file, int line, string id, IReadOnlyDictionary<string, string> cells)
{
    /// <summary>Identifier that joins the tables.</summary>
    public string Id { get; } = id;

    /// <summary>A field as text; empty where the archive does not have the term.</summary>
    public string this[string term] => cells.GetValueOrDefault(term, "");

    /// <summary>A fault of this row.</summary>
    public ArchiveFaultException Fault(string code, string message, string hint = "") => new(code, $"{file}, line {line}: {message}", hint);

    public string Needed(string term) => this[term].Length > 0 ? this[term] : throw Fault("FLD468", $"{term} is missing.");

    public double? Number(string term) => this[term].Length == 0 ? null
        : double.TryParse(this[term], NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number) ? number
        : throw Wrong(term, "number", "52.612");

    public int? Count(string term) => this[term].Length == 0 ? null
        : int.TryParse(this[term], NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count
        : throw Wrong(term, "count", "3");

    public FieldDate? MaybeDate(string term) => this[term].Length == 0 ? null : Date(term, this[term]);

    public FieldDate Date(string term, string text) => FieldDate.TryRead(text, _ => TimeSpan.Zero, out var date) ? date : throw Wrong(term, "date", "2026-05-09 or 2026-05-09T14:00+01:00");

    public DateTimeOffset Moment(string term) => Date(term, this[term]).Moment ?? throw Wrong(term, "moment", "2026-05-09T14:00+01:00");

    public IReadOnlyList<string> Names(string term) => this[term].Split(RecordText.ListSeparator, StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Refuses a field that has any other than some values.</summary>
    public void Only(string term, params string[] values)
    {
        if (this[term].Length > 0 && !values.Contains(this[term], StringComparer.Ordinal))
        {
            throw Fault("FLD468", $"{term} is '{this[term]}', which the log has no place for.", $"It takes {string.Join(" or ", values)}.");
        }
    }

    public ArchiveFaultException Wrong(string term, string kind, string form) => Fault("FLD468", $"{term} is '{this[term]}', which is no {kind}.", $"Write it as {form}.");
}
