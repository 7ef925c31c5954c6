namespace StudioKit.Field.Analysis;

/// <summary>What is cut off from the sheet in a corner of the frame: the panel ends there along straight edges, an animal does not.</summary>
internal sealed class CornerPart
{
    // An edge of the panel strays from a straight line by rounding to blocks and by what a lens bends; an animal's outline strays by more.
    private const double Straight = 2;
    private const double SurelyStraight = 1.2;
    private const double SurelyBent = 4;

    public CornerPart(BlockGrid grid, IReadOnlyList<int> part, FrameArea[] areas)
    {
        var border = part.Where(i => BlockRegions.Neighbours(grid, i).Any(next => areas[next] == FrameArea.Background))
            .Select(i => (X: (double)(i % grid.Columns), Y: (double)(i / grid.Columns))).ToList();
        var strays = Strays(border);
        IsBeyondPanel = strays <= Straight;
        IsDoubtful = strays is > SurelyStraight and < SurelyBent;
    }

    /// <summary>Whether it is what lies beyond the panel.</summary>
    public bool IsBeyondPanel { get; }

    /// <summary>Whether that cannot be told for sure.</summary>
    public bool IsDoubtful { get; }

    // How far the border strays from one straight edge, or from two that meet, in blocks.
    private static double Strays(List<(double X, double Y)> border)
    {
        if (border.Count < 3)
        {
            return 0;
        }

        var first = border.MaxBy(point => Square(border[0], point));
        var last = border.MaxBy(point => Square(first, point));
        var knee = border.MaxBy(point => Distance(point, first, last));
        return border.Max(point => Math.Min(Distance(point, first, knee), Distance(point, knee, last)));
    }

    private static double Square((double X, double Y) a, (double X, double Y) b) => ((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y));

    // To the stretch between two points.
    private static double Distance((double X, double Y) point, (double X, double Y) from, (double X, double Y) to)
    {
        var length = Square(from, to);
        var along = length == 0 ? 0 : Math.Clamp((((point.X - from.X) * (to.X - from.X)) + ((point.Y - from.Y) * (to.Y - from.Y))) / length, 0, 1);
        return Math.Sqrt(Square(point, (from.X + (along * (to.X - from.X)), from.Y + (along * (to.Y - from.Y)))));
    }
}
