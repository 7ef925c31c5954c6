using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Documents;

/// <summary>Outlines of where a grid of margins lies above a level, by marching squares; coordinates are columns to the right and rows down.</summary>
/// <remarks>A rim of lowest values around the grid closes every outline along the grid's edge.</remarks>
internal sealed class MarginContours(MarginGrid grid)
{
    // Far under any margin, so that an outline along the edge lies on the outermost points themselves.
    private const double Rim = -1e30;

    private readonly record struct Side(int Column, int Row, bool Upright);

    /// <summary>Closed outlines around everything at or above a level.</summary>
    public IReadOnlyList<IReadOnlyList<Point>> Rings(double level) => [.. Chains(level).Select(ring => (IReadOnlyList<Point>)[.. ring.Select(side => Crossing(side, level))])];

    /// <summary>The same outlines as lines, the grid's own edge left out; a closed line ends where it starts.</summary>
    public IReadOnlyList<IReadOnlyList<Point>> Lines(double level) =>
        [.. Chains(level).SelectMany(Inner).Select(line => (IReadOnlyList<Point>)[.. line.Select(side => Crossing(side, level))]).Where(line => line.Count > 1)];

    private IEnumerable<List<Side>> Chains(double level)
    {
        var next = Links(level);
        while (next.Count > 0)
        {
            var start = next.Keys.First();
            List<Side> ring = [];
            for (var side = start; next.Remove(side, out var following); side = following)
            {
                ring.Add(side);
            }

            yield return ring;
        }
    }

    // From the side where an outline leaves a cell's inside to the side where it comes in, the inside always on the same hand.
    private Dictionary<Side, Side> Links(double level)
    {
        var next = new Dictionary<Side, Side>();
        for (var row = -1; row < grid.Rows; row++)
        {
            for (var column = -1; column < grid.Columns; column++)
            {
                Link(column, row, level, next);
            }
        }

        return next;
    }

    private void Link(int column, int row, double level, Dictionary<Side, Side> next)
    {
        double[] corners = [Value(column, row), Value(column + 1, row), Value(column + 1, row + 1), Value(column, row + 1)];
        Side[] sides = [new(column, row, false), new(column + 1, row, true), new(column, row + 1, false), new(column, row, true)];
        var isSaddle = Enumerable.Range(0, 4).Count(i => Leaves(corners, i, level)) == 2;
        var isJoined = isSaddle && corners.Average() >= level;
        for (var i = 0; i < 4; i++)
        {
            if (Leaves(corners, i, level))
            {
                var entry = isSaddle ? (i + (isJoined ? 1 : 3)) % 4 : Enumerable.Range(0, 4).First(k => Enters(corners, k, level));
                next[sides[i]] = sides[entry];
            }
        }
    }

    private static bool Leaves(double[] corners, int side, double level) => corners[side] >= level && corners[(side + 1) % 4] < level;

    private static bool Enters(double[] corners, int side, double level) => corners[side] < level && corners[(side + 1) % 4] >= level;

    // Cut open where an outline runs along the grid's edge.
    private IEnumerable<List<Side>> Inner(List<Side> ring)
    {
        var gap = ring.FindIndex(OnEdge);
        if (gap < 0)
        {
            yield return [.. ring, ring[0]];
            yield break;
        }

        List<Side> line = [];
        foreach (var side in ring.Skip(gap).Concat(ring.Take(gap)))
        {
            if (!OnEdge(side))
            {
                line.Add(side);
            }
            else if (line.Count > 0)
            {
                yield return line;
                line = [];
            }
        }

        if (line.Count > 0)
        {
            yield return line;
        }
    }

    private bool OnEdge(Side side)
    {
        var (column, row) = End(side);
        return IsRim(side.Column, side.Row) || IsRim(column, row);
    }

    private Point Crossing(Side side, double level)
    {
        var (column, row) = End(side);
        var (from, to) = (Value(side.Column, side.Row), Value(column, row));
        var share = (level - from) / (to - from);
        return new Point(
            Mix(Within(side.Column, grid.Columns), Within(column, grid.Columns), share), Mix(Within(side.Row, grid.Rows), Within(row, grid.Rows), share));
    }

    private static (int Column, int Row) End(Side side) => side.Upright ? (side.Column, side.Row + 1) : (side.Column + 1, side.Row);

    private double Value(int column, int row) => IsRim(column, row) ? Rim : grid.Margins[(row * grid.Columns) + column];

    private bool IsRim(int column, int row) => column < 0 || row < 0 || column >= grid.Columns || row >= grid.Rows;

    private static int Within(int place, int count) => Math.Clamp(place, 0, count - 1);

    private static double Mix(double from, double to, double share) => from + ((to - from) * share);
}
