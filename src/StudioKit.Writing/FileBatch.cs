namespace StudioKit.Writing;

/// <summary>
/// The one way in which files are written: all of a run's files together, whole or not at all, and never over anything that is not StudioKit's own.
/// </summary>
/// <remarks>
/// <para>
/// Opening a batch checks every target that is known by then before the first byte is written; one that turns up while the run is at work is checked when it is added, and where it must
/// not be written, neither is anything else. Names are followed to the files that they lead to, links and all: a file that the run
/// reads, a photograph and a sidecar are never replaced; any other file that StudioKit did not write, or that was changed since, only where
/// <see cref="FileBatchRequest.Force"/> says so. Two targets that would be one file are refused.
/// </para>
/// <para>
/// Contents wait in a folder of the run's own beside their targets, on the disk, so a batch of any size keeps to its memory. <see cref="Commit"/> notes
/// them in the folder's list, then gives them their names. A batch that is disposed of before that, or stopped, leaves nothing behind; after a kill the next
/// batch for that folder clears up. At no point is a file half written or a folder in a state that the same command refuses.
/// </para>
/// <example><code>
/// using var batch = FileBatch.Open(new FileBatchRequest { Targets = [new("out/a.pdf"), new("out/b.pdf")], Inputs = [kit], Force = force }, stop);
/// batch.Write("out/a.pdf", stream => …);
/// batch.Write("out/b.pdf", bytes);
/// foreach (var path in batch.Commit()) { … }
/// </code></example>
/// </remarks>
public sealed class FileBatch : IDisposable
{
    private readonly Lock _turn = new();
    private readonly Dictionary<string, StagedFile> _files = new(StringComparer.Ordinal);
    private readonly List<string> _added = [];
    private readonly Staging _staging = new();
    private readonly TargetCheck _check;
    private CancellationTokenRegistration _stopping;
    private CancellationToken _stop;
    private bool _isClosed;

    /// <summary>Called in the moment between noting the files and naming them.</summary>
    internal Action BeforeNaming { get; set; } = () => { };

    private FileBatch(TargetCheck check) => _check = check;

    /// <summary>Whether a name is free, or holds what StudioKit wrote there; for a file that may have one of several names.</summary>
    /// <param name="path">The name.</param>
    /// <exception cref="FileWritingException">It is no name for a file.</exception>
    public static bool IsFree(string path) => new TargetCheck(new FileBatchRequest { Targets = [] }).Allows(new FileTarget(path));

    /// <summary>Checks all targets and makes ready to write them.</summary>
    /// <param name="request">What is going to be written, and what is read.</param>
    /// <param name="stop">Stops the run; what waits is removed at once, except where <see cref="Commit"/> is already at work, which then finishes.</param>
    /// <returns>The batch; disposing of it before it is committed leaves everything as it was.</returns>
    /// <exception cref="FileWritingException">A target must not or cannot be written; nothing was.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static FileBatch Open(FileBatchRequest request, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        stop.ThrowIfCancellationRequested();
        var targets = request.Targets.Select(target => new NamedTarget(target, TargetCheck.FullName(target))).ToList();
        var batch = new FileBatch(new TargetCheck(request)) { _stop = stop };
        batch._check.Refuse(targets);
        try
        {
            targets.ForEach(target => batch._files[target.Target.Path] = batch._staging.Reserve(target));
            batch._stopping = stop.Register(batch.Abandon);
            return batch;
        }
        catch
        {
            batch.Dispose();
            throw;
        }
    }

    /// <summary>Writes a target's contents, which wait until <see cref="Commit"/>. Targets may be written in any order and at the same time.</summary>
    /// <param name="target">The target's name as the request has it.</param>
    /// <param name="write">Writes the contents; the stream can seek and be read back.</param>
    /// <exception cref="FileWritingException">It cannot be written, e.g. because the disk is full.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public void Write(string target, Action<Stream> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        ThrowIfStopped();
        try
        {
            Waiting(target).Write(write);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            ThrowIfStopped();
            throw WritingFault.Of($"cannot write {target}", error);
        }
    }

    /// <inheritdoc cref="Write(string, Action{Stream})"/>
    /// <param name="target">The target's name as the request has it.</param>
    /// <param name="contents">All of its bytes.</param>
    public void Write(string target, ReadOnlyMemory<byte> contents) => Write(target, stream => stream.Write(contents.Span));

    /// <summary>Writes one more file, which the request did not name; it waits as the others do. Files may be added at the same time.</summary>
    /// <param name="target">The file; where it must not be written, <see cref="Commit"/> says so together with all others that must not.</param>
    /// <param name="contents">All of its bytes.</param>
    /// <exception cref="FileWritingException">Its folder cannot be written into, or another target is the same file.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public void Add(FileTarget target, ReadOnlyMemory<byte> contents)
    {
        ArgumentNullException.ThrowIfNull(target);
        var named = new NamedTarget(target, TargetCheck.FullName(target));
        lock (_turn)
        {
            ThrowIfStopped();
            if (!_check.Admits(named))
            {
                return;
            }

            _files[target.Path] = _staging.Reserve(named);
            _added.Add(target.Path);
        }

        Write(target.Path, contents);
    }

    /// <summary>Gives all files that were written their names, and ends the batch. A target that was not written stays as it was.</summary>
    /// <returns>The names of the files written: the request's in its order, then those that were added, by name.</returns>
    /// <exception cref="FileWritingException">An added target must not be written, and nothing was; or a file cannot be given its name, and the message says what was written.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped; nothing was written.</exception>
    public IReadOnlyList<string> Commit()
    {
        lock (_turn)
        {
            ThrowIfStopped();
            _check.RefuseAdded();
            _added.Sort(StringComparer.Ordinal);
            var ready = _files.Keys.Except(_added).Concat(_added).Select(path => _files[path]).Where(file => file.Hash is not null).ToList();
            var named = 0;
            try
            {
                ready.ForEach(file => file.RefuseIfTouched());
                Staging.Note(ready);
                BeforeNaming();
                ready.ForEach(file =>
                {
                    file.TakeName();
                    named++;
                });
            }
            catch (Exception error) when (WritingFault.IsOfFiles(error))
            {
                throw WritingFault.Of(
                    $"cannot write {ready[Math.Min(named, ready.Count - 1)].Target.Path}", error,
                    named == 0 ? "nothing was written" : $"{named} of {ready.Count} files are written, and the same command completes them");
            }

            Close(keepsFolders: named > 0);
            return [.. ready.Select(file => file.Target.Path)];
        }
    }

    /// <summary>Removes whatever still waits.</summary>
    public void Dispose()
    {
        _stopping.Dispose();
        Abandon();
    }

    private StagedFile Waiting(string target)
    {
        lock (_turn)
        {
            return _files[target];
        }
    }

    // Comes on another thread where the run is stopped; a commit at work is waited for.
    private void Abandon()
    {
        lock (_turn)
        {
            Close(keepsFolders: false);
        }
    }

    private void Close(bool keepsFolders)
    {
        _isClosed = true;
        _staging.Remove(keepsFolders);
    }

    private void ThrowIfStopped()
    {
        _stop.ThrowIfCancellationRequested();
        ObjectDisposedException.ThrowIf(_isClosed, this);
    }
}
