using System.Globalization;

namespace StudioKit.Cli.Running;

/// <summary>Tells a standard stream that was closed by the caller from one that is open.</summary>
/// <remarks>
/// The numbers of closed streams are given to whatever the process opens next, and that is a pipe of the runtime's own. Words written
/// there would be taken for its messages.
/// </remarks>
internal static class StandardStreams
{
    private const int LastNumber = 9;
    private const int AccessBits = 3;
    private const int ReadOnly = 0;

    /// <summary>Whether a stream's number belongs to something of this process itself.</summary>
    /// <param name="number">1 for output, 2 for errors.</param>
    public static bool IsClosed(int number)
    {
        if (!OperatingSystem.IsLinux())
        {
            return false;
        }

        try
        {
            var pipe = Link(number);
            return pipe is null || (pipe.StartsWith("pipe:", StringComparison.Ordinal)
                && (Access(number) == ReadOnly || Enumerable.Range(0, LastNumber + 1).Any(other => other != number && Link(other) == pipe && Access(other) == ReadOnly)));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or FormatException)
        {
            return false;
        }
    }

    private static string? Link(int number) => new FileInfo($"/proc/self/fd/{number}") is { } entry ? LinkText(entry) : null;

    private static string? LinkText(FileInfo entry)
    {
        try
        {
            return entry.LinkTarget;
        }
        catch (IOException)
        {
            return null;
        }
    }

    // "flags:" in octal, as open(2) counts them.
    private static int Access(int number)
    {
        var flags = File.ReadLines($"/proc/self/fdinfo/{number.ToString(CultureInfo.InvariantCulture)}").First(line => line.StartsWith("flags:", StringComparison.Ordinal));
        return Convert.ToInt32(flags["flags:".Length..].Trim(), 8) & AccessBits;
    }
}
