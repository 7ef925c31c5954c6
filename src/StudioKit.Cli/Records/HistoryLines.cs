using System.Globalization;
using StudioKit.Field.Log;

namespace StudioKit.Cli.Records;

/// <summary>Changes of a log in lines for a person.</summary>
internal static class HistoryLines
{
    private const int MostRecords = 12;
    private const int LongestText = 60;

    /// <summary>One line for the change, one for each record.</summary>
    public static string Of(LogChange change, LogIndex index)
    {
        var lines = new StringWriter(CultureInfo.InvariantCulture);
        lines.WriteLine($"{change.Number,4}  {change.At:yyyy-MM-dd HH:mm zzz}  {Action(change)}");
        foreach (var record in change.Records.Take(MostRecords))
        {
            lines.WriteLine($"      {RecordWords.Kind(record.Kind)} {record.ShortId}{Name(record, index)}: {What(record)}");
        }

        if (change.Records.Count > MostRecords)
        {
            lines.WriteLine($"      and {change.Records.Count - MostRecords} more");
        }

        return lines.ToString();
    }

    private static string Action(LogChange change) => change.Action switch
    {
        LogAction.Undone => string.Create(CultureInfo.InvariantCulture, $"took change {change.Target} back"),
        LogAction.Redone => string.Create(CultureInfo.InvariantCulture, $"made change {change.Target} again"),
        _ => change.Action.ToString().ToLowerInvariant(),
    };

    private static string Name(RecordChange record, LogIndex index) =>
        (record.AfterId ?? record.BeforeId) is { } id && index.Entry(id) is { Names: [var name, ..] } ? " " + name : "";

    private static string What(RecordChange record) => (record.BeforeId, record.AfterId) switch
    {
        (null, _) => "put in" + Told(record, field => $"{Words(field)} {Quoted(field.After)}"),
        (_, null) => "taken out" + Told(record, field => $"{Words(field)} {Quoted(field.Before)}"),
        _ => string.Join("; ", record.Fields.Select(field => $"{Words(field)} {Quoted(field.Before)} -> {Quoted(field.After)}")),
    };

    // Identifiers say nothing to a person; the short one stands before.
    private static string Told(RecordChange record, Func<FieldChange, string> text) =>
        string.Concat(record.Fields.Where(field => field.Field != "id" && !field.Field.EndsWith("_id", StringComparison.Ordinal)).Select(field => ", " + text(field)));

    private static string Words(FieldChange field) => field.Field.Replace('_', ' ');

    private static string Quoted(string text) => text.Length == 0 ? "nothing" : text.Length > LongestText ? $"\"{text[..LongestText]}...\"" : $"\"{text}\"";
}
