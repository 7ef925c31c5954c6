using StudioKit.Field;
using StudioKit.FieldFiles.Pictures;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Puts scale bars on many pictures at once.</summary>
public static class ScaleBatch
{
    /// <summary>Everything that a batch reads and writes.</summary>
    /// <param name="jobs">Pictures.</param>
    /// <param name="alsoRead">What is read besides the pictures, e.g. that of a rule.</param>
    public static FileBatchRequest Files(IReadOnlyList<ScaleJob> jobs, params IEnumerable<string> alsoRead) => new()
    {
        Targets = [.. jobs.SelectMany(job => new FileTarget[] { new(job.Target, job.Source), new(job.Sidecar, job.Source) })],
        Inputs = [.. jobs.Select(job => job.Source), .. alsoRead],
        CanBeForced = false,
    };

    /// <summary>Works through all pictures, as many at a time as there are processors, so that memory does not grow with the batch.</summary>
    /// <param name="jobs">Pictures.</param>
    /// <param name="files">Files of the run as <see cref="Files"/> names them; whoever opened them commits them.</param>
    /// <param name="progress">Told after each picture; none where nobody watches.</param>
    /// <param name="cancel">Stops between pictures.</param>
    /// <returns>One result a picture, in the order given.</returns>
    /// <exception cref="FileWritingException">A copy cannot be written, e.g. because the disk is full.</exception>
    /// <exception cref="OperationCanceledException">The batch was stopped.</exception>
    public static async Task<IReadOnlyList<FieldResult<ScaledPicture>>> RunAsync(
        IReadOnlyList<ScaleJob> jobs, FileBatch files, IProgress<ScaleBatchProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(jobs);
        var results = new FieldResult<ScaledPicture>[jobs.Count];
        var done = 0;
        var limits = new ParallelOptions { MaxDegreeOfParallelism = RowsAtOnce.Pictures, CancellationToken = cancel };
        await Parallel.ForAsync(0, jobs.Count, limits, (i, _) =>
        {
            results[i] = ScaledCopy.Make(jobs[i], files);
            progress?.Report(new ScaleBatchProgress(Interlocked.Increment(ref done), jobs.Count, jobs[i].Source));
            return ValueTask.CompletedTask;
        });
        return results;
    }
}
