namespace StudioKit.Writing;

/// <summary>Starts a file that another library then writes in place, such as a database, which cannot be staged.</summary>
public static class NewFile
{
    /// <summary>Creates an empty file where there is none; of several that try at once, one succeeds. A link that leads nowhere is not followed.</summary>
    /// <param name="path">Name of the file.</param>
    /// <returns>Whether this call created it; otherwise there is one already.</returns>
    /// <exception cref="FileWritingException">It cannot be created.</exception>
    public static bool TryCreate(string path)
    {
        var target = new NamedTarget(new FileTarget(path), TargetCheck.FullName(new FileTarget(path)));
        try
        {
            new FileStream(target.Full, FileMode.CreateNew, FileAccess.Write, FileShare.None).Dispose();
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
