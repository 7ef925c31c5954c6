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
}
