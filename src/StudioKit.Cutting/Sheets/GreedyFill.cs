using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Sheets;

/// <summary>Fills sheets region by region with the piece that suits it best; many runs with shuffled preferences.</summary>
internal sealed class GreedyFill
{
    private readonly SheetJob _job;
    private readonly double[] _bias;
    private readonly int[] _left;

    private GreedyFill(SheetJob job, Random? random)
    {
        _job = job;
        _bias = [.. job.Kinds.Select(kind => kind.Area * (random is null ? 1 : 0.5 + random.NextDouble()))];
        _left = [.. job.Kinds.Select(kind => kind.Demand)];
    }

    /// <summary>One run.</summary>
    /// <param name="job">The job.</param>
    /// <param name="preference">Stock in the order in which it is taken.</param>
    /// <param name="random">Shuffles how pieces are preferred; null for the largest first.</param>
    public static List<SheetBin> Run(SheetJob job, int[] preference, Random? random)
    {
        var fill = new GreedyFill(job, random);
        var bins = new List<SheetBin>();
        foreach (var stock in preference)
        {
            var sheet = job.Stock[stock];
            for (var n = 0; n < sheet.Available && fill.Fill(sheet.Width, sheet.Height) is { } layout; n++)
            {
                bins.Add(new SheetBin(stock, layout));
            }
        }

        return bins;
    }

    private Layout? Fill(int width, int height)
    {
        var choice = Enumerable.Range(0, _left.Length)
            .Where(i => _left[i] > 0)
            .OrderByDescending(i => _bias[i])
            .SelectMany(i => _job.Kinds[i].Lying(i).Where(lying => lying.Width <= width && lying.Height <= height)
                .OrderBy(lying => Math.Min(width - lying.Width, height - lying.Height)))
            .FirstOrDefault();
        if (choice is null)
        {
            return null;
        }

        _left[choice.Kind]--;
        var right = width - choice.Width;
        var above = height - choice.Height;

        // The first cut leaves the larger of the two remainders in one piece.
        if ((long)right * height >= (long)above * width)
        {
            var column = Joined(choice, Fill(choice.Width, above), Layout.Above);
            return Joined(column, Fill(right, height), Layout.Beside);
        }

        var row = Joined(choice, Fill(right, choice.Height), Layout.Beside);
        return Joined(row, Fill(width, above), Layout.Above);
    }

    private static Layout Joined(Layout first, Layout? second, Func<Layout, Layout, Layout> join) =>
        second is null ? first : join(first, second);
}
