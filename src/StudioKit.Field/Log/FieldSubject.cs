namespace StudioKit.Field.Log;

/// <summary>One animal or plant portrayed in a session.</summary>
public sealed record FieldSubject
{
    /// <summary>Identifier, unique for good; given by the log where it is empty.</summary>
    public string Id { get; init; } = "";

    /// <summary>Session it was found in.</summary>
    public required string SessionId { get; init; }

    /// <summary>Scientific name as far as it is sure, without any qualifier; empty where nothing is.</summary>
    public string ScientificName { get; init; } = "";

    /// <summary>Doubt about the name, such as <c>cf.</c> or <c>aff.</c></summary>
    public string IdentificationQualifier { get; init; } = "";

    /// <summary>Everyday name.</summary>
    public string VernacularName { get; init; } = "";

    /// <summary>Rank that the scientific name stands for.</summary>
    public string TaxonRank { get; init; } = "";

    /// <summary>Who identified it, in order.</summary>
    public IReadOnlyList<string> IdentifiedBy { get; init; } = [];

    /// <summary>Sex.</summary>
    public string Sex { get; init; } = "";

    /// <summary>Life stage.</summary>
    public string LifeStage { get; init; } = "";

    /// <summary>How many were seen [1]; ≥ 1.</summary>
    public int? IndividualCount { get; init; }

    /// <summary>What it did.</summary>
    public string Behaviour { get; init; } = "";

    /// <summary>Kind of record, after Darwin Core.</summary>
    public string BasisOfRecord { get; init; } = "HumanObservation";

    /// <summary>How far its place is made coarser when the log leaves the house.</summary>
    public PlaceSensitivity Sensitivity { get; init; }

    /// <summary>When it was taken up.</summary>
    public DateTimeOffset? HoldStart { get; init; }

    /// <summary>When it was let go.</summary>
    public DateTimeOffset? HoldEnd { get; init; }

    /// <summary>Most time it may be held; whole seconds.</summary>
    public TimeSpan? HoldLimit { get; init; }

    /// <summary>Whether it was released where it was found; none where it was never held.</summary>
    public bool? Released { get; init; }

    /// <summary>Anything else.</summary>
    public string Remarks { get; init; } = "";

    /// <summary>The animal taken up.</summary>
    /// <param name="now">Present moment.</param>
    /// <param name="limit">Most time it may be held.</param>
    /// <returns>The changed record, or why it cannot be.</returns>
    public FieldResult<FieldSubject> TakenUp(DateTimeOffset now, TimeSpan limit) => HoldStart is not null && HoldEnd is null
        ? new FieldDiagnostic("FLD417", "hold start", "It is already held.")
        : this with { HoldStart = now, HoldEnd = null, HoldLimit = limit, Released = null };

    /// <summary>The animal let go.</summary>
    /// <param name="now">Present moment.</param>
    /// <param name="released">Whether it was released where it was found.</param>
    /// <returns>The changed record, or why it cannot be.</returns>
    public FieldResult<FieldSubject> LetGo(DateTimeOffset now, bool released) => HoldStart is null || HoldEnd is not null
        ? new FieldDiagnostic("FLD418", "hold end", "It is not held.")
        : this with { HoldEnd = now, Released = released };
}
