using StudioKit.Kits;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>What a comma-separated table of pieces or stock held.</summary>
/// <typeparam name="T">One row.</typeparam>
/// <param name="Rows">The rows; empty where there are diagnostics.</param>
/// <param name="Diagnostics">Everything that is wrong with the table.</param>
public sealed record CutTable<T>(IReadOnlyList<T> Rows, IReadOnlyList<Diagnostic> Diagnostics)
{
    /// <summary>Whether the table can be used.</summary>
    public bool Sound => Diagnostics.Count == 0;
}
