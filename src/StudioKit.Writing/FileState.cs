namespace StudioKit.Writing;

/// <summary>What a name stood for at one moment, to see whether somebody touched it since.</summary>
/// <param name="Place">What stood there.</param>
/// <param name="Length">Its length [byte].</param>
/// <param name="Changed">When it was changed last.</param>
internal readonly record struct FileState(FilePlace Place, long Length, DateTime Changed)
{
    public static FileState Of(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? new FileState(FilePlace.At(path), file.Length, file.LastWriteTimeUtc) : new FileState(FilePlace.At(path), 0, default);
    }
}
