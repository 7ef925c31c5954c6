using System.Text;

namespace StudioKit.Web.Drawing;

/// <summary>Outlines of where a lattice of values lies at a level or above, cell by cell, with straight lines between its nodes.</summary>
/// <param name="values">Values, row by row from the front, each from left to right.</param>
/// <param name="columns">Nodes across.</param>
internal sealed class MapBands(IReadOnlyList<double> values, int columns)
{
    private readonly int _rows = columns == 0 ? 0 : values.Count / columns;

    /// <summary>A path round everything at a level or above.</summary>
    /// <param name="level">The level.</param>
    /// <param name="left">Where the first column lies.</param>
    /// <param name="front">Where the first row lies; rows go up from there.</param>
    /// <param name="width">How far it is across all columns.</param>
    /// <param name="depth">How far it is along all rows.</param>
    public string From(double level, double left, double front, double width, double depth)
    {
        var path = new StringBuilder();
        var (stepX, stepY) = (width / Math.Max(1, columns - 1), depth / Math.Max(1, _rows - 1));
        for (var row = 0; row < _rows - 1; row++)
        {
            for (var column = 0; column < columns - 1; column++)
            {
                var run = Full(row, column, level);
                if (run > 0)
                {
                    var (x, y) = (left + (column * stepX), front - (row * stepY));
                    path.Append('M').Append(Path.Number(x)).Append(' ').Append(Path.Number(y)).Append('H').Append(Path.Number(x + (run * stepX)))
                        .Append('V').Append(Path.Number(y - stepY)).Append('H').Append(Path.Number(x)).Append('Z');
                    column += run - 1;
                }
                else
                {
                    Cut(path, row, column, level, (X: left + (column * stepX), Y: front - (row * stepY)), (stepX, stepY));
                }
            }
        }

        return path.ToString();
    }

    /// <summary>The lines between what lies at a level or above and what lies under it.</summary>
    /// <inheritdoc cref="From" path="/param"/>
    public string Line(double level, double left, double front, double width, double depth)
    {
        var path = new StringBuilder();
        var (stepX, stepY) = (width / Math.Max(1, columns - 1), depth / Math.Max(1, _rows - 1));
        for (var row = 0; row < _rows - 1; row++)
        {
            for (var column = 0; column < columns - 1; column++)
            {
                var crossings = Crossings(Corners(row, column), level);
                for (var i = 0; i + 1 < crossings.Count; i += 2)
                {
                    foreach (var (command, (x, y)) in new[] { ('M', crossings[i]), ('L', crossings[i + 1]) })
                    {
                        path.Append(command).Append(Path.Number(left + ((column + x) * stepX))).Append(' ').Append(Path.Number(front - ((row + y) * stepY)));
                    }
                }
            }
        }

        return path.ToString();
    }

    private static List<(double X, double Y)> Crossings(double[] corners, double level)
    {
        var found = new List<(double X, double Y)>();
        for (var side = 0; side < 4; side++)
        {
            var (here, next) = (corners[side], corners[(side + 1) % 4]);
            if (here >= level != next >= level)
            {
                found.Add(Along(side, (level - here) / (next - here)));
            }
        }

        return found;
    }

    // Sides in order about a cell: front, right, back, left.
    private static (double X, double Y) Along(int side, double share) => side switch { 0 => (share, 0.0), 1 => (1.0, share), 2 => (1 - share, 1.0), _ => (0.0, 1 - share) };

    // How many cells from here on lie at the level or above with all their corners.
    private int Full(int row, int column, double level)
    {
        var run = 0;
        while (column + run < columns - 1 && Corners(row, column + run).All(corner => corner >= level))
        {
            run++;
        }

        return run;
    }

    private double[] Corners(int row, int column)
    {
        var first = (row * columns) + column;
        return [values[first], values[first + 1], values[first + columns + 1], values[first + columns]];
    }

    // Round the cell's corners: those above, and where its sides cross the level.
    private void Cut(StringBuilder path, int row, int column, double level, (double X, double Y) at, (double X, double Y) step)
    {
        var corners = Corners(row, column);
        var command = 'M';
        for (var i = 0; i < 4; i++)
        {
            var (here, next) = (corners[i], corners[(i + 1) % 4]);
            if (here >= level)
            {
                Add(i, 0);
            }

            if (here >= level != next >= level)
            {
                Add(i, (level - here) / (next - here));
            }
        }

        if (command == 'L')
        {
            path.Append('Z');
        }

        void Add(int side, double share)
        {
            var (x, y) = Along(side, share);
            path.Append(command).Append(Path.Number(at.X + (x * step.X))).Append(' ').Append(Path.Number(at.Y - (y * step.Y)));
            command = 'L';
        }
    }
}
