using StudioKit.Field;

namespace StudioKit.FieldFiles.Log;

/// <summary>Tells the names that can be a log's from those that cannot.</summary>
internal static class LogPath
{
    /// <summary>Why a name cannot be a log's; none where it can.</summary>
    public static FieldDiagnostic? Refusal(string path, bool mustExist)
    {
        // Names that SQLite keeps in memory or in a file of its own, where they are lost with the process.
        if (path.Trim().Length == 0 || path.StartsWith(':') || path.StartsWith("file:", StringComparison.OrdinalIgnoreCase) || path.Contains('\0', StringComparison.Ordinal))
        {
            return new FieldDiagnostic("FLD457", path.Length == 0 ? "\"\"" : path, "The log is a file on the disk; give its name, e.g. --log field.log.");
        }

        if (Directory.Exists(path))
        {
            return new FieldDiagnostic("FLD457", path, "This is a folder; give the name of the log's file, e.g. " + Path.Combine(path, "field.log") + ".");
        }

        return mustExist && !File.Exists(path) ? Missing(path) : null;
    }

    /// <summary>An empty file, in which no log has been started.</summary>
    public static FieldDiagnostic Nothing(string path) => new("FLD458", path, "There is no log in this file yet; 'studiokit log session' starts one.");

    private static FieldDiagnostic Missing(string path)
    {
        var others = Others(path);
        return new FieldDiagnostic(
            "FLD458", path, "There is no such log.",
            others.Length > 0 ? $"In its folder there is {string.Join(", ", others)}." : "'studiokit log session' starts one; --log names another.");
    }

    private static string[] Others(string path)
    {
        try
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".";
            return [.. Directory.EnumerateFiles(folder, "*.log").Select(Path.GetFileName).OfType<string>().Order(StringComparer.Ordinal).Take(3)];
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return [];
        }
    }
}
