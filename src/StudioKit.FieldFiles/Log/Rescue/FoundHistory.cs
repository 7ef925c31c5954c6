using StudioKit.Field.Log;

namespace StudioKit.FieldFiles.Log.Rescue;

/// <summary>The state of each record after the last change that is left of the history: a second copy of what is in the tables.</summary>
internal sealed class FoundHistory
{
    public const string Table = "changed_record";

    private readonly Dictionary<(LogRecordKind Kind, string Id), LogBody?> _states = [];

    public FoundHistory(IEnumerable<FoundRow> rows)
    {
        foreach (var row in rows.Where(IsSound).OrderBy(row => (long)row.Values[0]!).ThenBy(row => (long)row.Values[1]!))
        {
            var kind = Enum.Parse<LogRecordKind>((string)row.Values[2]!);
            var (before, after) = (Body(row.Values[5]), Body(row.Values[6]));
            if (before is not null)
            {
                _states[(kind, before.Id)] = null;
            }

            if (after is not null)
            {
                _states[(kind, after.Id)] = after;
            }
        }
    }

    /// <summary>Records of a kind that were there after the last change.</summary>
    public IEnumerable<LogBody> Alive(LogRecordKind kind) => _states.Where(state => state.Key.Kind == kind).Select(state => state.Value).OfType<LogBody>();

    /// <summary>Whether the last change known of a record took it out.</summary>
    public bool IsGone(LogRecordKind kind, string id) => _states.TryGetValue((kind, id), out var state) && state is null;

    /// <summary>Whether a row is one of the history, as it was written.</summary>
    public static bool IsSound(FoundRow row) =>
        row.Values is [long, long, string kind, string, _, string or null, string or null, string seal]
        && Enum.TryParse<LogRecordKind>(kind, out _)
        && LogBody.SealOf((string?)row.Values[5] + (string?)row.Values[6]) == seal;

    private static LogBody? Body(object? text) => text is string json ? LogBody.Read(json) : null;
}
