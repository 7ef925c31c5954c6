namespace StudioKit.Writing;

/// <summary>Starts a file that another library then writes in place, such as a database, which cannot be staged.</summary>
public static class NewFile
{
    /// <summary>Creates a file where there is none, whole or not at all; of several that try at once, one succeeds. A link that leads nowhere is not followed.</summary>
    /// <param name="path">Name of the file.</param>
    /// <param name="write">Writes what it begins with.</param>
    /// <returns>Whether this call created it; otherwise there is one already.</returns>
    /// <exception cref="FileWritingException">It cannot be created.</exception>
    public static bool TryCreate(string path, Action<Stream> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        var target = new NamedTarget(new FileTarget(path), TargetCheck.FullName(new FileTarget(path)));
        switch (FilePlace.At(target.Full).Kind)
        {
            case FileKind.File:
                return false;
            case FileKind.Other:
                throw new FileWritingException($"{path} is a device or a pipe, not a file; nothing was written.");
            case FileKind.Nothing when FilePlace.IsLink(target.Full):
                throw new FileWritingException($"cannot create {path}: it is a link that leads nowhere; nothing was written.");
        }

        try
        {
            CreateWhole(target, write);
            return true;
        }
        catch (IOException) when (FilePlace.At(target.Full).Kind == FileKind.File)
        {
            return false;
        }
        catch (Exception error) when (WritingFault.IsOfFiles(error))
        {
            throw WritingFault.Of($"cannot create {path}", error);
        }
    }

    private static void CreateWhole(NamedTarget target, Action<Stream> write)
    {
        if (!Directory.Exists(target.Folder))
        {
            throw new DirectoryNotFoundException();
        }

        StagingFolder.RemoveStale(target.Folder);
        using var staging = StagingFolder.In(target.Folder);
        var file = new StagedFile(target, staging.Reserve(Path.GetFileName(target.Full))!, staging);
        file.Write(write);
        file.TakeFreeName();
    }

    /// <summary>Takes away a file that <see cref="TryCreate"/> created in this very run and in which nothing whole could be written.</summary>
    /// <param name="path">Name of the file; it may be gone already.</param>
    /// <exception cref="FileWritingException">It cannot be removed.</exception>
    public static void Discard(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception error) when (WritingFault.IsOfFiles(error))
        {
            throw WritingFault.Of($"cannot remove {path}", error, "an unfinished file is left under that name");
        }
    }
}
