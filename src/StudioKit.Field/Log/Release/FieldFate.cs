namespace StudioKit.Field.Log.Release;

/// <summary>What happens to a field when a record leaves the log.</summary>
public enum FieldFate
{
    /// <summary>It leaves as it was recorded.</summary>
    Published,

    /// <summary>Something coarser leaves in its place.</summary>
    Coarsened,

    /// <summary>It stays in the log.</summary>
    Withheld,
}
