using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log;

/// <summary>What a change did to one row, as the log keeps it.</summary>
/// <param name="Kind">Kind of record.</param>
/// <param name="ShortId">Short identifier of the record.</param>
/// <param name="RowId">Where the row stands.</param>
/// <param name="Before">The row before; none where it was new.</param>
/// <param name="After">The row after; none where it was taken out.</param>
internal sealed record StoredChange(LogRecordKind Kind, string ShortId, long RowId, LogBody? Before, LogBody? After)
{
    /// <summary>The change that takes this one back.</summary>
    public StoredChange Reversed => this with { Before = After, After = Before };

    /// <summary>For people: which fields differ.</summary>
    public RecordChange ToRecord()
    {
        var columns = (After ?? Before)!.Values.Select(value => value.Key).ToList();
        return new RecordChange(Kind, ShortId, Before?.Id, After?.Id, [.. columns.Select(Difference).OfType<FieldChange>()]);
    }

    private FieldChange? Difference(string column) => (Text(Before, column), Text(After, column)) is var (before, after) && before != after
        ? new FieldChange(column, before, after)
        : null;

    private static string Text(LogBody? body, string column) => Convert.ToString(body?[column], System.Globalization.CultureInfo.InvariantCulture) ?? "";
}
