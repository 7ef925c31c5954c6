
namespace StudioKit.Planning.Exploring;

/// <summary>Designs tried so far; several are planned at once, and what comes of it does not depend on how many.</summary>
internal sealed class DesignTrials
{
    // Neighbours share what was worked out, so a worker takes some at a time.
    private const int Piece = 8;

    private readonly List<DesignEvaluator> _workers;
    private readonly Dictionary<DesignCode, TriedDesign> _tried = [];
    private readonly int _inAStep;
    private readonly CancellationToken _stop;

    public DesignTrials(DesignSpace space, DesignAim aim, DesignSearchOptions options, CancellationToken stop)
    {
        _workers = [.. Enumerable.Range(0, OperatingSystem.IsBrowser() ? 1 : options.AtOnce).Select(_ => new DesignEvaluator(space, aim, options.Services))];
        (_inAStep, _stop, Frontier) = (options.InAStep, stop, new DesignFrontier(aim.Measures));
    }

    /// <summary>The designs that no other beats.</summary>
    public DesignFrontier Frontier { get; }

    /// <summary>All that were tried.</summary>
    public IReadOnlyDictionary<DesignCode, TriedDesign> Tried => _tried;

    /// <summary>Counts a design among those tried.</summary>
    public void Keep(TriedDesign design)
    {
        _tried.Add(design.Code, design);
        Frontier.Add(design);
    }

    /// <summary>Tries those that were not tried yet, step by step.</summary>
    /// <returns>After each step how many were tried.</returns>
    /// <exception cref="OperationCanceledException">It was stopped; what was tried until then is kept.</exception>
    public IEnumerable<int> Try(IEnumerable<DesignCode> designs)
    {
        foreach (var batch in designs.Where(design => !_tried.ContainsKey(design)).Distinct().Chunk(_inAStep))
        {
            foreach (var design in Planned(batch).OfType<TriedDesign>())
            {
                Keep(design);
            }

            _stop.ThrowIfCancellationRequested();
            yield return _tried.Count;
        }
    }

    private TriedDesign?[] Planned(DesignCode[] batch)
    {
        var found = new TriedDesign?[batch.Length];
        var next = -1;

        // Written so that a page, which has one thread, goes without the code for several.
        if (OperatingSystem.IsBrowser() || _workers.Count == 1)
        {
            Work(_workers[0]);
        }
        else
        {
            Parallel.ForEach(_workers, new ParallelOptions { MaxDegreeOfParallelism = _workers.Count }, Work);
        }

        return found;

        void Work(DesignEvaluator worker)
        {
            for (var piece = Interlocked.Increment(ref next); piece * Piece < batch.Length; piece = Interlocked.Increment(ref next))
            {
                for (var i = piece * Piece; i < Math.Min(batch.Length, (piece + 1) * Piece) && !_stop.IsCancellationRequested; i++)
                {
                    found[i] = TryOrStop(worker, batch[i]);
                }
            }
        }
    }

    private TriedDesign? TryOrStop(DesignEvaluator worker, DesignCode design)
    {
        try
        {
            return worker.Try(design, _stop);
        }
        catch (OperationCanceledException) when (_stop.IsCancellationRequested)
        {
            return null;
        }
    }
}
