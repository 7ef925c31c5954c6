using StudioKit.Field;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Puts scale bars on many pictures at once.</summary>
public static class ScaleBatch
{
    /// <summary>Works through all pictures, as many at a time as there are processors, so that memory does not grow with the batch.</summary>
    /// <param name="jobs">Pictures.</param>
    /// <param name="progress">Told after each picture; none where nobody watches.</param>
    /// <param name="cancel">Stops between pictures.</param>
    /// <returns>One result a picture, in the order given.</returns>
    /// <exception cref="OperationCanceledException">The batch was stopped.</exception>
    public static async Task<IReadOnlyList<FieldResult<ScaledPicture>>> RunAsync(
        IReadOnlyList<ScaleJob> jobs, IProgress<ScaleBatchProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        var results = new FieldResult<ScaledPicture>[jobs.Count];
        var done = 0;
        var limits = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = cancel };
        await Parallel.ForAsync(0, jobs.Count, limits, (i, _) =>
        {
            results[i] = ScaledCopy.Make(jobs[i]);
            progress?.Report(new ScaleBatchProgress(Interlocked.Increment(ref done), jobs.Count, jobs[i].Source));
            return ValueTask.CompletedTask;
        });
        return results;
    }
}
