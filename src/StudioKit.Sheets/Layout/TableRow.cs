namespace StudioKit.Sheets.Layout;

/// <summary>One row of a table.</summary>
/// <param name="Cells">As many cells as there are columns.</param>
/// <param name="Total">True for a sum, which is set bold.</param>
internal sealed record TableRow(IReadOnlyList<string> Cells, bool Total = false);
