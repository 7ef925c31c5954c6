namespace StudioKit.Planning.Cutting;

/// <summary>Which way a cut runs across its region.</summary>
public enum SheetCutDirection
{
    /// <summary>Parallel to Y: a left and a right part.</summary>
    AcrossWidth,

    /// <summary>Parallel to X: a lower and an upper part.</summary>
    AcrossHeight,
}
