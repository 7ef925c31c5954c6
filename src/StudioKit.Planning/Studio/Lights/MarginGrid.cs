using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>White margin over the whole panel at points in even steps from edge to edge, the sheet unrolled where it is swept.</summary>
/// <param name="Columns">Points across [1]; ≥ 2.</param>
/// <param name="Rows">Points from front to back [1]; ≥ 2.</param>
/// <param name="Margins">Stops above clipping, row by row from the front, each row from left to right.</param>
/// <param name="ContourStep">Step between contour lines.</param>
/// <param name="ContourLevels">Margins at which contour lines are drawn, lowest first.</param>
public sealed record MarginGrid(
    int Columns, int Rows, IReadOnlyList<double> Margins, Stops ContourStep, IReadOnlyList<Stops> ContourLevels)
{
    /// <summary>Margin at a point.</summary>
    /// <param name="column">Column from the left [1].</param>
    /// <param name="row">Row from the front [1].</param>
    public Stops At(int column, int row) => new(Margins[(row * Columns) + column]);

    /// <summary>Where a column lies, from the left edge of a panel.</summary>
    /// <param name="column">Column from the left [1].</param>
    /// <param name="width">Width of the panel.</param>
    public Length FromLeft(int column, Length width) => width * ((double)column / (Columns - 1));

    /// <summary>Where a row lies, along the sheet from its front edge.</summary>
    /// <param name="row">Row from the front [1].</param>
    /// <param name="depth">Depth of the panel along the sheet.</param>
    public Length FromFront(int row, Length depth) => depth * ((double)row / (Rows - 1));
}
