namespace StudioKit.Field.Analysis;

/// <summary>Judges whether what was taken for background can be a lit panel.</summary>
/// <param name="grid">The frame.</param>
/// <param name="stops">Light of each block in stops under clipping, negative.</param>
/// <param name="areas">What each block was found to show, before corners are filled.</param>
internal sealed class BackgroundDoubt(BlockGrid grid, double[] stops, FrameArea[] areas)
{
    // A panel lit so badly shows as grey as a shaded wall does (common practice, no source).
    private const double NearWhiteStops = -3;

    // Most of the frame's edge shows background when a subject stands on a panel; one that fills the frame cannot be judged.
    private const double LeastOfEdge = 0.35;

    // Light on a panel never falls off by as much within what a camera sees.
    private const double MostFallOff = 4.5;
    private const double DarkStops = 1;
    private const double LeakShare = 0.01;
    private const int Reach = 3;

    /// <summary>The reason for doubt, as a sentence; none where there is none.</summary>
    /// <param name="evenly">The background as it would be if light could only change as slowly as on a panel.</param>
    public string? Reason(FrameArea[] evenly)
    {
        var background = Enumerable.Range(0, areas.Length).Where(i => areas[i] == FrameArea.Background).Select(i => stops[i]).Order().ToList();
        if (background.Count == 0 || background[^1] < NearWhiteStops)
        {
            return "Nothing even in this frame comes near white: it is no white-background frame, or the flash beneath did not fire.";
        }

        if (ShareOfEdge() < LeastOfEdge)
        {
            return "No bright, even area reaches round the frame's edge: it is no white-background frame, or the subject fills it.";
        }

        return Leaks(evenly, background[background.Count / 2]) || background[^1] - background[background.Count / 100] > MostFallOff
            ? "A wide, soft edge lets background run into the subject, or the light falls off as on no panel that is lit all over: what is which cannot be told, so take the frame with the subject's outline in focus, or without it."
            : null;
    }

    private double ShareOfEdge()
    {
        var edge = Enumerable.Range(0, areas.Length).Where(i =>
            i < grid.Columns || i >= areas.Length - grid.Columns || i % grid.Columns == 0 || i % grid.Columns == grid.Columns - 1).ToList();
        return edge.Count(i => areas[i] == FrameArea.Background) / (double)edge.Count;
    }

    // Dark background that is only reached over a slope steeper than any on a panel.
    private bool Leaks(FrameArea[] evenly, double median)
    {
        var leaked = Enumerable.Range(0, areas.Length).Count(i =>
            areas[i] == FrameArea.Background && stops[i] < median - DarkStops && !IsNear(evenly, i));
        return leaked > LeakShare * areas.Length;
    }

    private bool IsNear(FrameArea[] evenly, int block)
    {
        var (column, row) = (block % grid.Columns, block / grid.Columns);
        for (var y = Math.Max(0, row - Reach); y <= Math.Min(grid.Rows - 1, row + Reach); y++)
        {
            for (var x = Math.Max(0, column - Reach); x <= Math.Min(grid.Columns - 1, column + Reach); x++)
            {
                if (evenly[(y * grid.Columns) + x] == FrameArea.Background)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
