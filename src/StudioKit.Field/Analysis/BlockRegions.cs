namespace StudioKit.Field.Analysis;

/// <summary>Parts of a frame that hang together.</summary>
internal static class BlockRegions
{
    /// <summary>All parts, each with its blocks.</summary>
    /// <param name="grid">The frame.</param>
    /// <param name="belongs">Which blocks count.</param>
    public static List<List<int>> Of(BlockGrid grid, bool[] belongs)
    {
        var (seen, regions) = (new bool[belongs.Length], new List<List<int>>());
        for (var i = 0; i < belongs.Length; i++)
        {
            if (belongs[i] && !seen[i])
            {
                regions.Add(From(grid, [i], belongs, seen));
            }
        }

        return regions;
    }

    /// <summary>All that hangs together with some blocks, themselves included where they count.</summary>
    /// <param name="grid">The frame.</param>
    /// <param name="starts">Where to start.</param>
    /// <param name="belongs">Which blocks count.</param>
    /// <param name="seen">Blocks that are taken already; those found are added.</param>
    public static List<int> From(BlockGrid grid, IEnumerable<int> starts, bool[] belongs, bool[] seen)
    {
        var (open, found) = (new Stack<int>(starts), new List<int>());
        while (open.TryPop(out var i))
        {
            if (!belongs[i] || seen[i])
            {
                continue;
            }

            seen[i] = true;
            found.Add(i);
            foreach (var next in Neighbours(grid, i))
            {
                open.Push(next);
            }
        }

        return found;
    }

    /// <summary>Blocks to the left, right, above and below.</summary>
    public static IEnumerable<int> Neighbours(BlockGrid grid, int i)
    {
        var column = i % grid.Columns;
        if (column > 0)
        {
            yield return i - 1;
        }

        if (column < grid.Columns - 1)
        {
            yield return i + 1;
        }

        if (i >= grid.Columns)
        {
            yield return i - grid.Columns;
        }

        if (i + grid.Columns < grid.Columns * grid.Rows)
        {
            yield return i + grid.Columns;
        }
    }

    /// <summary>Whether a block lies at the frame's edge.</summary>
    public static bool IsAtEdge(BlockGrid grid, int i) =>
        i < grid.Columns || i >= grid.Columns * (grid.Rows - 1) || i % grid.Columns == 0 || i % grid.Columns == grid.Columns - 1;
}
