namespace StudioKit.Writing;

/// <summary>A folder of a run's own among the system's temporary files, gone when it is disposed of: for what another library must find in a file.</summary>
/// <param name="prefix">How its name begins, e.g. <c>studiokit-log-</c>; the rest is chance.</param>
/// <exception cref="IOException">The folder cannot be made.</exception>
public sealed class TemporaryFolder(string prefix) : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory(prefix);

    /// <summary>Path of a file in it.</summary>
    /// <param name="name">Name of the file.</param>
    public string File(string name) => Path.Combine(_folder.FullName, name);

    /// <summary>Copies a file into the folder, without its rights, which may forbid to write.</summary>
    /// <param name="from">File to copy.</param>
    /// <param name="to">Path in the folder, which must be free.</param>
    /// <exception cref="IOException">It cannot be copied.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public void Copy(string from, string to)
    {
        if (Path.GetDirectoryName(Path.GetFullPath(to)) != _folder.FullName)
        {
            throw new ArgumentException("Copies lie in the temporary folder itself.", nameof(to));
        }

        using var source = System.IO.File.OpenRead(from);
        using var target = new FileStream(to, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        source.CopyTo(target);
    }

    /// <inheritdoc/>
    public void Dispose() => _folder.Delete(recursive: true);
}
