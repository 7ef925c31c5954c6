namespace StudioKit.Web.Results;

/// <summary>What was made of one group.</summary>
/// <param name="Files">The files.</param>
public sealed record MadeFiles(IReadOnlyList<MadeFile> Files);
