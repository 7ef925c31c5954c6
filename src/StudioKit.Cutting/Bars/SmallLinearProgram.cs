namespace StudioKit.Cutting.Bars;

/// <summary>max aim·x where every row·x keeps to its limit and x ≥ 0, with limits ≥ 0: the simplex method on a dense table, begun where all x are 0.</summary>
/// <remarks>For a dozen unknowns and some hundred rows, where loading a solver would take longer. In floating point: its answer is a hint, not a proof.</remarks>
internal sealed class SmallLinearProgram
{
    private const int MostPivots = 400;
    private const double Tolerance = 1e-9;

    private readonly double[,] _table;
    private readonly int _rows;
    private readonly int _columns;

    private SmallLinearProgram(int[] aim, IReadOnlyList<(int[] Row, double Limit)> rows)
    {
        (_rows, _columns) = (rows.Count, aim.Length);
        _table = new double[_rows + 1, _columns + 1];
        for (var i = 0; i < _columns; i++)
        {
            _table[_rows, i] = aim[i];
            for (var r = 0; r < _rows; r++)
            {
                _table[r, i] = rows[r].Row[i];
            }
        }

        for (var r = 0; r < _rows; r++)
        {
            _table[r, _columns] = rows[r].Limit;
        }
    }

    /// <summary>Solves one.</summary>
    /// <param name="aim">What each unknown is worth.</param>
    /// <param name="rows">What they must keep to.</param>
    /// <returns>The unknowns; ≥ 0.</returns>
    public static double[] Solve(int[] aim, IReadOnlyList<(int[] Row, double Limit)> rows) => new SmallLinearProgram(aim, rows).Solve();

    private double[] Solve()
    {
        // Names of what is free and what a row holds: an unknown, or, from their number on, what a row has to spare.
        int[] free = [.. Enumerable.Range(0, _columns)];
        int[] held = [.. Enumerable.Range(_columns, _rows)];
        for (var pivots = 0; pivots < MostPivots && Entering() is { } column && Leaving(column) is { } row; pivots++)
        {
            Pivot(row, column);
            (free[column], held[row]) = (held[row], free[column]);
        }

        var solution = new double[_columns];
        for (var r = 0; r < _rows; r++)
        {
            if (held[r] < _columns)
            {
                solution[held[r]] = Math.Max(0, _table[r, _columns]);
            }
        }

        return solution;
    }

    /// <summary>The unknown that gains most for each unit; null at the best.</summary>
    private int? Entering()
    {
        var (best, most) = ((int?)null, Tolerance);
        for (var i = 0; i < _columns; i++)
        {
            if (_table[_rows, i] > most)
            {
                (best, most) = (i, _table[_rows, i]);
            }
        }

        return best;
    }

    /// <summary>The row that runs out of room first.</summary>
    private int? Leaving(int column)
    {
        var (best, least) = ((int?)null, double.PositiveInfinity);
        for (var r = 0; r < _rows; r++)
        {
            if (_table[r, column] > Tolerance && _table[r, _columns] / _table[r, column] < least)
            {
                (best, least) = (r, _table[r, _columns] / _table[r, column]);
            }
        }

        return best;
    }

    private void Pivot(int row, int column)
    {
        var pivot = _table[row, column];
        for (var i = 0; i <= _columns; i++)
        {
            _table[row, i] = i == column ? 1 / pivot : _table[row, i] / pivot;
        }

        for (var r = 0; r <= _rows; r++)
        {
            var factor = _table[r, column];
            for (var i = 0; r != row && i <= _columns; i++)
            {
                _table[r, i] = i == column ? -factor / pivot : _table[r, i] - (factor * _table[row, i]);
            }
        }
    }
}
