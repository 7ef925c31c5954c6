namespace StudioKit.Field.Log;

/// <summary>Something measured on a subject.</summary>
public sealed record FieldMeasurement
{
    /// <summary>Identifier, unique for good; given by the log where it is empty.</summary>
    public string Id { get; init; } = "";

    /// <summary>Subject it was measured on.</summary>
    public required string SubjectId { get; init; }

    /// <summary>What was measured, e.g. <c>body length</c>.</summary>
    public required string Type { get; init; }

    /// <summary>Value, a number or a word.</summary>
    public required string Value { get; init; }

    /// <summary>SI unit, e.g. <c>mm</c>; empty for a word or a ratio.</summary>
    public string Unit { get; init; } = "";

    /// <summary>Accuracy in the same unit; empty where it is unknown.</summary>
    public string Accuracy { get; init; } = "";

    /// <summary>How it was measured.</summary>
    public string Method { get; init; } = "";
}
