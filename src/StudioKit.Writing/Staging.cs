namespace StudioKit.Writing;

/// <summary>The staging folders of one batch: one for every folder that its targets lie in, whatever names that goes by.</summary>
internal sealed class Staging
{
    private readonly Dictionary<FileIdentity, StagingFolder> _folders = [];
    private readonly List<StagedFile> _files = [];
    private readonly MadeFolders _made = new();

    /// <summary>Takes a target's name, making its folder where that is missing.</summary>
    /// <exception cref="FileWritingException">The folder cannot be written into, or another target has the same name.</exception>
    public StagedFile Reserve(NamedTarget target)
    {
        try
        {
            var folder = FolderOf(target);
            var staged = folder.Reserve(Path.GetFileName(target.Full)) ?? throw SameName(target);
            _files.Add(new StagedFile(target, staged, folder));
            return _files[^1];
        }
        catch (Exception error) when (WritingFault.IsOfFiles(error))
        {
            throw WritingFault.Of($"cannot write into {target.ShownFolder}", error);
        }
    }

    /// <summary>Notes in the folders' lists what is going to be there.</summary>
    public static void Note(IEnumerable<StagedFile> files)
    {
        foreach (var folder in files.GroupBy(file => file.Folder))
        {
            WrittenList.Add(folder.Key.Folder, folder.Select(file => (file.Name, file.Hash!)));
        }
    }

    /// <summary>Removes the staging folders with all that waits in them.</summary>
    /// <param name="keepsFolders">Whether folders made for the targets stay although they are empty.</param>
    public void Remove(bool keepsFolders)
    {
        foreach (var folder in _folders.Values)
        {
            folder.Dispose();
        }

        if (!keepsFolders)
        {
            _made.RemoveEmpty();
        }
    }

    private StagingFolder FolderOf(NamedTarget target)
    {
        RefuseFileAsFolder(target);
        _made.Make(target.Folder);
        var identity = FilePlace.At(target.Folder).Identity;
        if (!_folders.TryGetValue(identity, out var folder))
        {
            StagingFolder.RemoveStale(target.Folder);
            _folders[identity] = folder = StagingFolder.In(target.Folder);
        }

        return folder;
    }

    private static void RefuseFileAsFolder(NamedTarget target)
    {
        var there = target.Folder;
        while (Path.GetDirectoryName(there) is { } above && FilePlace.At(there).Kind == FileKind.Nothing && !FilePlace.IsLink(there))
        {
            there = above;
        }

        if (!Directory.Exists(there))
        {
            throw new FileWritingException($"cannot write into {target.ShownFolder}: {there} is not a folder; nothing was written.");
        }
    }

    // The file system knows which of the waiting files has the name.
    private FileWritingException SameName(NamedTarget target)
    {
        var folder = FolderOf(target);
        var taken = folder.PlaceOf(Path.GetFileName(target.Full)).Identity;
        var other = _files.First(file => FilePlace.At(file.Staged).Identity == taken).Target;
        return target.Target.From.Length > 0 && other.From.Length > 0
            ? new($"{other.From} and {target.Target.From} would both become {target.Target.Path}; nothing was written. Write them into different folders.")
            : new($"{other.Path} and {target.Target.Path} are the same file; nothing was written. Give them different names.");
    }
}
