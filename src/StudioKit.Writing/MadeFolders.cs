namespace StudioKit.Writing;

/// <summary>Folders that a run made for its files, so that it can take them away again where it writes nothing.</summary>
internal sealed class MadeFolders
{
    private readonly List<string> _made = [];

    /// <summary>Makes a folder and those above it that are missing.</summary>
    public void Make(string folder)
    {
        var missing = new Stack<string>();
        for (var at = folder; at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
        {
            missing.Push(at);
        }

        Directory.CreateDirectory(folder);
        _made.AddRange(missing);
    }

    /// <summary>Takes away those that are still empty.</summary>
    public void RemoveEmpty()
    {
        foreach (var folder in _made.AsEnumerable().Reverse())
        {
            try
            {
                Directory.Delete(folder);
            }
            catch (Exception error) when (WritingFault.IsOfFiles(error))
            {
                // Somebody put something there meanwhile: then it is theirs.
                return;
            }
        }
    }
}
