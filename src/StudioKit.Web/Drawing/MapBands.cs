using System.Text;
using StudioKit.Web.Results;

namespace StudioKit.Web.Drawing;

/// <summary>Outlines of where a lattice of values lies at a level or above, cell by cell, with straight lines between its nodes.</summary>
/// <remarks>Drawn anew while a hand moves something, in an interpreter: each cell is looked at once, and most are told from their corners alone.</remarks>
internal sealed class MapBands
{
    private const int Nowhere = 0;
    private const int Everywhere = 15;

    private readonly IReadOnlyList<double> _values;
    private readonly int _columns;
    private readonly int _rows;
    private readonly Spot _corner;
    private readonly Spot _step;
    private readonly string[] _across;
    private readonly string[] _along;

    /// <param name="values">Values, row by row from the front, each from left to right.</param>
    /// <param name="columns">Nodes across.</param>
    /// <param name="corner">Where the first of them lies in the drawing; rows go up from there.</param>
    /// <param name="width">How far it is across all columns.</param>
    /// <param name="depth">How far it is along all rows.</param>
    public MapBands(IReadOnlyList<double> values, int columns, Spot corner, double width, double depth)
    {
        (_values, _columns, _rows, _corner) = (values, columns, columns == 0 ? 0 : values.Count / columns, corner);
        _step = new Spot(width / Math.Max(1, _columns - 1), -depth / Math.Max(1, _rows - 1));
        _across = [.. Enumerable.Range(0, _columns).Select(column => Path.Number(X(column)))];
        _along = [.. Enumerable.Range(0, _rows).Select(row => Path.Number(Y(row)))];
    }

    /// <summary>A path round everything at a level or above, and the lines between that and what lies under it.</summary>
    /// <param name="level">The level.</param>
    public (string Outline, string Edge) At(double level)
    {
        var (outline, edge) = (new StringBuilder(), new StringBuilder());
        for (var row = 0; row < _rows - 1; row++)
        {
            var first = 0;
            for (var column = 0; column < _columns - 1; column++)
            {
                var corners = CornersAt(row, column, level);
                if (corners != Everywhere)
                {
                    Block(outline, row, first, column);
                    first = column + 1;
                    Cut(row, column, level, corners, outline, edge);
                }
            }

            Block(outline, row, first, _columns - 1);
        }

        return (outline.ToString(), edge.ToString());
    }

    private double X(double column) => _corner.X + (column * _step.X);

    private double Y(double row) => _corner.Y + (row * _step.Y);

    // A cell's corners in order about it: front left, front right, back right, back left.
    private double Value(int row, int column, int corner) => _values[((row + (corner >> 1)) * _columns) + column + (corner is 1 or 2 ? 1 : 0)];

    // Which corners lie at the level or above, one bit for each.
    private int CornersAt(int row, int column, double level)
    {
        var front = (row * _columns) + column;
        var back = front + _columns;
        return (_values[front] >= level ? 1 : 0) | (_values[front + 1] >= level ? 2 : 0) | (_values[back + 1] >= level ? 4 : 0) | (_values[back] >= level ? 8 : 0);
    }

    // Cells of a row that lie at the level or above as a whole.
    private void Block(StringBuilder outline, int row, int first, int end)
    {
        if (end > first)
        {
            outline.Append('M').Append(_across[first]).Append(' ').Append(_along[row]).Append('H').Append(_across[end]).Append('V').Append(_along[row + 1]).Append('H').Append(_across[first]).Append('Z');
        }
    }

    // Round the cell's corners: those above, and where its sides cross the level; between the crossings runs the edge.
    private void Cut(int row, int column, double level, int corners, StringBuilder outline, StringBuilder edge)
    {
        if (corners == Nowhere)
        {
            return;
        }

        var (begin, draw) = ('M', 'M');
        for (var side = 0; side < 4; side++)
        {
            var isAbove = (corners & (1 << side)) != 0;
            if (isAbove)
            {
                outline.Append(begin).Append(_across[column + (side is 1 or 2 ? 1 : 0)]).Append(' ').Append(_along[row + (side >> 1)]);
                begin = 'L';
            }

            if (isAbove != ((corners & (1 << ((side + 1) % 4))) != 0))
            {
                var crossing = Crossing(row, column, side, level);
                outline.Append(begin).Append(crossing);
                edge.Append(draw).Append(crossing);
                (begin, draw) = ('L', draw == 'M' ? 'L' : 'M');
            }
        }

        outline.Append('Z');
    }

    // Sides in order about a cell: front, right, back, left.
    private string Crossing(int row, int column, int side, double level)
    {
        var (here, next) = (Value(row, column, side), Value(row, column, (side + 1) % 4));
        var share = (level - here) / (next - here);
        var (x, y) = side switch { 0 => (share, 0.0), 1 => (1.0, share), 2 => (1 - share, 1.0), _ => (0.0, 1 - share) };
        return $"{Path.Number(X(column + x))} {Path.Number(Y(row + y))}";
    }
}
