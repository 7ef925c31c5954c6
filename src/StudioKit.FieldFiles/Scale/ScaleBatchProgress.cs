namespace StudioKit.FieldFiles.Scale;

/// <summary>How far a batch has got.</summary>
/// <param name="Done">Pictures finished, well or not [1].</param>
/// <param name="Total">Pictures in all [1].</param>
/// <param name="Source">Picture finished last.</param>
public readonly record struct ScaleBatchProgress(int Done, int Total, string Source);
