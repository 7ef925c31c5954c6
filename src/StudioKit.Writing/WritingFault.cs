namespace StudioKit.Writing;

/// <summary>Makes sentences of what a system says when a file cannot be written.</summary>
public static class WritingFault
{
    // Error numbers of Linux and macOS, and the low word of the Windows results.
    private static readonly int[] DiskFull = [28, unchecked((int)0x80070070), unchecked((int)0x80070027)];
    private static readonly int[] QuotaUsedUp = [122, 69, unchecked((int)0x8007050F)];
    private static readonly int[] ReadOnly = [30, unchecked((int)0x80070013)];

    private static readonly int[] InUse = [11, 35, unchecked((int)0x80070020)];

    /// <summary>Whether an exception is of the kind that files cause, not a fault of ours.</summary>
    public static bool IsOfFiles(Exception error) => error is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException;

    /// <summary>Whether another process has the file open for itself, which passes.</summary>
    public static bool IsInUse(IOException error) => InUse.Contains(error.HResult);

    /// <summary>The exception for the user.</summary>
    /// <param name="what">What could not be done, e.g. <c>cannot write out/card.pdf</c>.</param>
    /// <param name="error">What the system said.</param>
    /// <param name="after">What has become of the run.</param>
    public static FileWritingException Of(string what, Exception error, string after = "nothing was written") =>
        new($"{what}: {Reason(error)}; {after}.", error);

    /// <summary>What the system said, in words.</summary>
    public static string Reason(Exception error) => error switch
    {
        UnauthorizedAccessException => "you have no permission",
        _ when DiskFull.Contains(error.HResult) => "the disk is full",
        _ when QuotaUsedUp.Contains(error.HResult) => "your share of the disk is used up",
        _ when ReadOnly.Contains(error.HResult) => "the disk can only be read",
        PathTooLongException => "the name is too long",
        DirectoryNotFoundException => "its folder is gone",
        FileNotFoundException => "no file can be made there",
        _ => WithoutStagedName(error.Message),
    };

    // The system quotes the name that it was given, which is one of chance and tells a user nothing.
    private static string WithoutStagedName(string message)
    {
        var quoted = message.IndexOf(" : '", StringComparison.Ordinal);
        return (quoted > 0 ? message[..quoted] : message).TrimEnd('.');
    }
}
