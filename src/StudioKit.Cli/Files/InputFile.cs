namespace StudioKit.Cli.Files;

/// <summary>Files that a command is given.</summary>
internal static class InputFile
{
    /// <summary>Reads a whole file as text.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static string Text(string path) => Read(path, File.ReadAllText);

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
            throw new FileTroubleException($"cannot read {path}: {error.Message}", error);
        }
    }
}
