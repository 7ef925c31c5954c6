using System.Text;

namespace StudioKit.Cli.Files;

/// <summary>Files that a command is given.</summary>
internal static class InputFile
{
    /// <summary>Reads a whole file as text.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static string Text(string path) => Read(path, File.ReadAllText);

    /// <summary>Reads a text that is small where it is what it should be; no more of it is ever read than that.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read, or is larger.</exception>
    public static string Text(string path, int mostBytes) => Read(path, file =>
    {
        using var stream = File.OpenRead(file);
        var buffer = new byte[mostBytes + 1];
        var count = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        return count > mostBytes
            ? throw new IOException(FormattableString.Invariant($"it is larger than {mostBytes / 1024} kB, and no such file needs to be."))
            : Encoding.UTF8.GetString(buffer.AsSpan(0, count)).TrimStart('\uFEFF');
    });

    /// <summary>Reads a file, and says which one where that cannot be done.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static T Read<T>(string path, Func<string, T> read)
    {
        try
        {
            return read(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new FileTroubleException(Directory.Exists(path) ? $"cannot read {path}: it is a folder; name a file in it." : $"cannot read {path}: {error.Message}", error);
        }
    }
}
