namespace StudioKit.Sheets.Documents;

/// <summary>A map over a frame, ready to be drawn.</summary>
/// <param name="Title">What it shows, with its unit.</param>
/// <param name="Columns">Cells across [1]; ≥ 1.</param>
/// <param name="Rows">Cells down [1]; ≥ 1.</param>
/// <param name="Stops">Value of each cell in stops, row by row from the top left [1]; not a number where unknown.</param>
public sealed record FrameMap(string Title, int Columns, int Rows, IReadOnlyList<double> Stops)
{
    /// <summary>Whether the values are differences, so that both signs count alike; otherwise what lies under zero is not white.</summary>
    public bool IsDifference { get; init; }
}
