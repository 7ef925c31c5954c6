namespace StudioKit.Field.Log;

/// <summary>Which record a short identifier stands for.</summary>
/// <param name="ShortId">The short identifier, unique in its log and never given to another record.</param>
/// <param name="Kind">Kind of record.</param>
/// <param name="RecordId">Full identifier of the record.</param>
public sealed record ShortLabel(string ShortId, LogRecordKind Kind, string RecordId)
{
    /// <summary>Labels for the records of a log that has none yet, in the order in which they were put in.</summary>
    /// <param name="log">The log.</param>
    public static IReadOnlyList<ShortLabel> For(LogSnapshot log)
    {
        ArgumentNullException.ThrowIfNull(log);
        var taken = new HashSet<string>(StringComparer.Ordinal);
        return [.. log.Records.Select(record => Next(record.Kind, record.Id, taken))];
    }

    /// <summary>A label for one more record.</summary>
    /// <param name="kind">Kind of record.</param>
    /// <param name="recordId">Full identifier of the record.</param>
    /// <param name="taken">Short identifiers given so far; the new one is added.</param>
    internal static ShortLabel Next(LogRecordKind kind, string recordId, HashSet<string> taken)
    {
        var shortId = Log.ShortId.Of(recordId, taken.Contains);
        taken.Add(shortId);
        return new ShortLabel(shortId, kind, recordId);
    }
}
