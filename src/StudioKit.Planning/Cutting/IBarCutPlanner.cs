namespace StudioKit.Planning.Cutting;

/// <summary>Decides which pieces are cut from which bars.</summary>
public interface IBarCutPlanner
{
    /// <summary>Plans a job of bars.</summary>
    /// <param name="request">Pieces, stock, kerf and trim.</param>
    /// <param name="progress">Told of every better plan or bound.</param>
    /// <param name="cancellationToken">Ends the search early; the best plan so far comes back with its honest gap.</param>
    /// <returns>The plan; pieces that can't be cut are named in it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length, count or price is outside the range its record gives.</exception>
    public BarCutPlan Plan(
        BarCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default);
}
