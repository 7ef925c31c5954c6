namespace StudioKit.Physics.Light;

/// <summary>Points of the panel at the centres of equal cells, row by row from the front, each row from left to right.</summary>
public sealed record PanelGrid
{
    /// <summary>Makes a grid.</summary>
    /// <param name="columns">Cells across [1]; 1 to 1000.</param>
    /// <param name="rows">Cells from front to back, along the sheet [1]; 1 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count is outside its range.</exception>
    public PanelGrid(int columns, int rows)
    {
        Columns = (int)Guard.Between(columns, 1, 1000);
        Rows = (int)Guard.Between(rows, 1, 1000);
    }

    /// <summary>Cells across [1].</summary>
    public int Columns { get; }

    /// <summary>Cells from front to back [1].</summary>
    public int Rows { get; }

    /// <summary>Number of points [1].</summary>
    public int Count => Columns * Rows;
}
