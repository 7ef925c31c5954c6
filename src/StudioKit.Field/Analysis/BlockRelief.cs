namespace StudioKit.Field.Analysis;

/// <summary>The light of each block and how it changes from block to block: what tells a lit sheet from what stands on it.</summary>
internal sealed class BlockRelief
{
    /// <summary>Blocks to either side over which evenness is judged [1].</summary>
    public const int Reach = 2;

    private const double Floor = 1.0 / 4096;

    // Light on a sheet changes from block to block as it does over five; an outline changes at once.
    private const double AtOnce = 0.7;
    private const double LeastStep = 0.1;

    // Noise of code values hardly depends on the light, as the encoding follows the root of it; texture is well above it, and above rounding.
    private const double OverNoise = 6;
    private const double LeastTexture = 12;
    private const int FewestForNoise = 50;

    private readonly BlockGrid _grid;

    public BlockRelief(BlockGrid grid)
    {
        _grid = grid;
        Stops = [.. grid.Blocks.Select(block => Math.Log2(Math.Max(block.Darkest, Floor)))];
        Unevenness = Range(Reach);
        var nearby = Range(1);
        IsStep = [.. Unevenness.Select((far, i) => far > StepAt(Stops[i]) && nearby[i] > AtOnce * far)];
    }

    /// <summary>Light in stops under clipping, negative [1].</summary>
    public double[] Stops { get; }

    /// <summary>Brightest to darkest within two blocks, in stops [1].</summary>
    public double[] Unevenness { get; }

    /// <summary>Whether the light changes there at once, as at an outline.</summary>
    public bool[] IsStep { get; }

    /// <summary>Blocks that show more detail than the noise of the sheet.</summary>
    /// <param name="sheet">Blocks that are sheet for sure.</param>
    public bool[] Textured(IReadOnlyList<int> sheet)
    {
        var noise = sheet.Select(i => _grid.Blocks[i]).Where(block => block.White < 0.05).Select(block => block.Detail).Order().ToList();
        var limit = Math.Max(LeastTexture, noise.Count < FewestForNoise ? 0 : OverNoise * noise[noise.Count / 4]);
        return [.. _grid.Blocks.Select(block => block.Detail > limit)];
    }

    /// <summary>Smallest and largest of a figure around each block, in a square of so many blocks to either side.</summary>
    public (double[] Low, double[] High) Extremes(double[] values, int reach)
    {
        // Rows first, then columns: a running minimum and maximum separate.
        var (low, high) = Extremes(values, values, reach, 1, 0);
        return Extremes(low, high, reach, 0, 1);
    }

    private static double StepAt(double stops) => LeastStep * (1 + Math.Max(0, -stops - 2));

    private double[] Range(int reach)
    {
        var (low, high) = Extremes(Stops, reach);
        return [.. low.Zip(high, (least, most) => most - least)];
    }

    private (double[] Low, double[] High) Extremes(double[] low, double[] high, int reach, int right, int down)
    {
        var (least, most) = (new double[low.Length], new double[low.Length]);
        for (var i = 0; i < low.Length; i++)
        {
            var (column, row) = (i % _grid.Columns, i / _grid.Columns);
            (least[i], most[i]) = (double.MaxValue, double.MinValue);
            for (var step = -reach; step <= reach; step++)
            {
                var (x, y) = (column + (step * right), row + (step * down));
                if (x >= 0 && y >= 0 && x < _grid.Columns && y < _grid.Rows)
                {
                    least[i] = Math.Min(least[i], low[(y * _grid.Columns) + x]);
                    most[i] = Math.Max(most[i], high[(y * _grid.Columns) + x]);
                }
            }
        }

        return (least, most);
    }
}
