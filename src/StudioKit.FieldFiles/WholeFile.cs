namespace StudioKit.FieldFiles;

/// <summary>Writes a file whole or not at all: a reader sees the old file or the new one, never half.</summary>
public static class WholeFile
{
    /// <summary>Writes beside the target under a name of chance, flushes to the disk, then renames over the target.</summary>
    /// <param name="path">File to write; one that is there already is replaced.</param>
    /// <param name="write">Writes the contents.</param>
    /// <exception cref="IOException">The file cannot be written; the old one is as it was.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written; the old one is as it was.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(write);

        // A fixed name might be somebody's file, or a link that leads to one.
        var partial = $"{path}.{Path.GetRandomFileName()}";
        var stream = new FileStream(partial, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        try
        {
            using (stream)
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(partial, path, overwrite: true);
        }
        finally
        {
            File.Delete(partial);
        }
    }
}
