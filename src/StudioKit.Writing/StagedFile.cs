namespace StudioKit.Writing;

/// <summary>A target of a run and the file that waits to take its name.</summary>
internal sealed class StagedFile(NamedTarget target, string staged, StagingFolder folder)
{
    private readonly FileState _before = FileState.Of(target.Full);
    private readonly bool _isFree = FilePlace.At(target.Full).Kind == FileKind.Nothing && !FilePlace.IsLink(target.Full);

    public FileTarget Target { get; } = target.Target;

    public StagingFolder Folder { get; } = folder;

    public string Name => Path.GetFileName(target.Full);

    /// <summary>Where it waits.</summary>
    public string Staged => staged;

    /// <summary>SHA-256 of what waits; none until all of it is there.</summary>
    public string? Hash { get; private set; }

    /// <summary>Writes what waits and sees to it that it is on the disk.</summary>
    public void Write(Action<Stream> write)
    {
        Hash = null;
        using (var stream = new FileStream(staged, FileMode.Truncate, FileAccess.ReadWrite, FileShare.None))
        {
            write(stream);
            stream.Flush(flushToDisk: true);
        }

        Hash = ContentHash.Of(staged);
    }

    /// <summary>Refuses where somebody touched the target while the run was at work.</summary>
    /// <exception cref="FileWritingException">The target changed.</exception>
    public void RefuseIfTouched()
    {
        if (FileState.Of(target.Full) != _before)
        {
            throw new FileWritingException($"{Target.Path} was changed by somebody else meanwhile; nothing was written.");
        }
    }

    /// <summary>Gives the file its name; one that had it is replaced in the same moment, one that came up meanwhile never.</summary>
    public void TakeName() => TakeName(isReplacing: !_isFree);

    /// <summary>Gives the file its name where that is still free.</summary>
    /// <exception cref="IOException">Something has the name.</exception>
    public void TakeFreeName() => TakeName(isReplacing: false);

    private void TakeName(bool isReplacing)
    {
        if (isReplacing)
        {
            File.Move(staged, target.Full, overwrite: true);
        }
        else
        {
            FreeName.Take(staged, target.Full);
        }
    }
}
