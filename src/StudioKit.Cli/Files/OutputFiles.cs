using StudioKit.Writing;

namespace StudioKit.Cli.Files;

/// <summary>Writes a command's files: all of them, or none.</summary>
internal static class OutputFiles
{
    /// <summary>Writes files whose contents are at hand.</summary>
    /// <param name="host">Whose stop is heeded.</param>
    /// <param name="force">Whether files that are not ours may be replaced.</param>
    /// <param name="inputs">What the command reads, none of which is ever replaced.</param>
    /// <param name="files">Paths and contents.</param>
    /// <returns>Their paths in order.</returns>
    /// <exception cref="FileWritingException">A file must not or cannot be written.</exception>
    public static IReadOnlyList<string> Write(
        CommandHost host, bool force, IReadOnlyList<string> inputs, IReadOnlyList<(string Path, ReadOnlyMemory<byte> Content)> files)
    {
        var request = new FileBatchRequest { Targets = [.. files.Select(file => new FileTarget(file.Path))], Inputs = inputs, Force = force };
        using var batch = FileBatch.Open(request, host.Stop);
        foreach (var (path, content) in files)
        {
            batch.Write(path, content);
        }

        return Committed(host, batch);
    }

    /// <summary>A batch for files whose names turn up as they are made.</summary>
    /// <param name="host">Whose stop is heeded.</param>
    /// <param name="force">Whether files that are not ours may be replaced.</param>
    /// <param name="inputs">What the command reads, none of which is ever replaced.</param>
    public static FileBatch Open(CommandHost host, bool force, IReadOnlyList<string> inputs) =>
        FileBatch.Open(new FileBatchRequest { Targets = [], Inputs = inputs, Force = force }, host.Stop);

    /// <summary>Gives a batch's files their names, and notes that they are written.</summary>
    public static IReadOnlyList<string> Committed(CommandHost host, FileBatch batch)
    {
        var written = batch.Commit();
        foreach (var path in written)
        {
            host.Written.Add(path);
        }

        return written;
    }

    /// <summary>Paths of files in a folder.</summary>
    /// <exception cref="FileTroubleException">The folder has no name.</exception>
    public static IReadOnlyList<(string Path, ReadOnlyMemory<byte> Content)> In(string folder, IEnumerable<(string Name, ReadOnlyMemory<byte> Content)> files) =>
        [.. files.Select(file => (In(folder, file.Name), file.Content))];

    /// <summary>Path of a file in a folder.</summary>
    /// <exception cref="FileTroubleException">The folder has no name.</exception>
    public static string In(string folder, string name) =>
        folder.Length == 0 ? throw new FileTroubleException("--out names no folder; give one, e.g. --out out/fen-edge.") : Path.Combine(folder, name);
}
