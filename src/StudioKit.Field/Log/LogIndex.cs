namespace StudioKit.Field.Log;

/// <summary>Finds records of a log by what people call them: a short identifier, <c>last</c>, a name where only one record has it, or the full identifier.</summary>
public sealed class LogIndex
{
    /// <summary>What stands for the record that was put in last.</summary>
    public const string Last = "last";

    private readonly IReadOnlyList<ShortLabel> _labels;
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);
    private readonly bool[] _isShown;
    private readonly Lazy<IReadOnlyList<LogEntry>> _entries;
    private readonly Lazy<Dictionary<string, LogEntry>> _byId;

    /// <summary>An index of a log.</summary>
    /// <param name="log">The log.</param>
    /// <param name="labels">Its short identifiers, in the order in which they were given.</param>
    /// <exception cref="InvalidOperationException">Two records have one identifier.</exception>
    public LogIndex(LogSnapshot log, IReadOnlyList<ShortLabel> labels)
    {
        ArgumentNullException.ThrowIfNull(log);
        ArgumentNullException.ThrowIfNull(labels);
        (Log, _labels, _isShown) = (log, labels, new bool[labels.Count]);

        // A record that was moved has two labels in a row; the later one is shown.
        for (var place = 0; place < labels.Count; place++)
        {
            _places[labels[place].RecordId] = place;
        }

        Show();
        _entries = new(() => LogEntries.Of(log, [.. labels.Where((_, place) => _isShown[place])]));
        _byId = new(() => Entries.ToDictionary(entry => entry.Id, StringComparer.Ordinal));
    }

    /// <summary>The log.</summary>
    public LogSnapshot Log { get; }

    /// <summary>Every record, in the order in which they were put in.</summary>
    public IReadOnlyList<LogEntry> Entries => _entries.Value;

    /// <summary>The entry of a record by its full identifier; none where the log has no such record.</summary>
    /// <param name="id">Full identifier.</param>
    public LogEntry? Entry(string id) => _byId.Value.GetValueOrDefault(id);

    /// <summary>The short identifier of a record; empty where the log has no such record.</summary>
    /// <param name="id">Full identifier.</param>
    public string ShortId(string id) => _places.TryGetValue(id, out var place) && _isShown[place] ? _labels[place].ShortId : "";

    /// <summary>Finds a session.</summary>
    /// <param name="reference">What it is called.</param>
    public FieldResult<FieldSession> Session(string reference) => Of(reference, LogRecordKind.Session, id => Log.Sessions.First(session => session.Id == id));

    /// <summary>Finds a subject.</summary>
    /// <param name="reference">What it is called.</param>
    public FieldResult<FieldSubject> Subject(string reference) => Of(reference, LogRecordKind.Subject, id => Log.Subjects.First(subject => subject.Id == id));

    /// <summary>Finds a frame.</summary>
    /// <param name="reference">What it is called.</param>
    public FieldResult<FieldFrame> Frame(string reference) => Of(reference, LogRecordKind.Frame, id => Log.Frames.First(frame => frame.Id == id));

    /// <summary>Finds a measurement.</summary>
    /// <param name="reference">What it is called.</param>
    public FieldResult<FieldMeasurement> Measurement(string reference) =>
        Of(reference, LogRecordKind.Measurement, id => Log.Measurements.First(measurement => measurement.Id == id));

    /// <summary>Finds a record.</summary>
    /// <param name="reference">What it is called.</param>
    /// <param name="kind">Kind of record; none where any will do.</param>
    /// <returns>The record, or why it is not known which one is meant.</returns>
    public FieldResult<LogEntry> Find(string reference, LogRecordKind? kind = null)
    {
        ArgumentNullException.ThrowIfNull(reference);
        var (what, candidates) = (KindName(kind), Entries.Where(entry => kind is null || entry.Kind == kind).ToList());
        if (reference == Last)
        {
            return candidates.Count > 0 ? candidates[^1] : new FieldDiagnostic("FLD471", Last, $"The log has no {what} yet.");
        }

        var found = candidates.Where(entry => entry.Id == reference || string.Equals(entry.ShortId, reference, StringComparison.OrdinalIgnoreCase)).ToList();
        found = found.Count > 0 ? found : [.. candidates.Where(entry => entry.IsNamed(reference))];
        return found.Count switch
        {
            1 => found[0],
            0 => Missing(reference, what),
            _ => new FieldDiagnostic("FLD472", reference, $"This is the name of {found.Count} records; name one by its short identifier:", string.Join(", ", found.Select(entry => $"{KindName(entry.Kind)} {entry}"))),
        };
    }

    // What was taken out keeps its label, and is not shown.
    private void Show()
    {
        foreach (var (_, id) in Log.Records)
        {
            if (_places.TryGetValue(id, out var place))
            {
                _isShown[place] = _isShown[place] ? throw new InvalidOperationException($"two records have the identifier {id}") : true;
            }
        }
    }

    internal static string KindName(LogRecordKind? kind) => kind?.ToString().ToLowerInvariant() ?? "record";

    private FieldResult<T> Of<T>(string reference, LogRecordKind kind, Func<string, T> get)
        where T : class
    {
        var found = Find(reference, kind);
        return found.IsSound ? get(found.Value.Id) : FieldResult<T>.Refused(found.Diagnostics);
    }

    private FieldDiagnostic Missing(string reference, string what)
    {
        var other = Entries.FirstOrDefault(entry => entry.Id == reference || string.Equals(entry.ShortId, reference, StringComparison.OrdinalIgnoreCase) || entry.IsNamed(reference));
        return other is not null
            ? new FieldDiagnostic("FLD473", reference, $"This is a {KindName(other.Kind)}, not a {what}: {other}.")
            : new FieldDiagnostic("FLD471", reference, $"The log has no {what} of this name.", "'studiokit log list' shows the short identifiers and names.");
    }
}
