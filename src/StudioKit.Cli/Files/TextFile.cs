namespace StudioKit.Cli.Files;

/// <summary>Text files that a command is given.</summary>
internal static class TextFile
{
    /// <summary>Reads a whole file.</summary>
    /// <exception cref="FileTroubleException">The file cannot be read.</exception>
    public static string Read(string path)
    {
        try
        {
            return File.ReadAllText(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new FileTroubleException($"cannot read {path}: {error.Message}", error);
        }
    }
}
