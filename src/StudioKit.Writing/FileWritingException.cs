namespace StudioKit.Writing;

/// <summary>Files could not be written, or must not be; the message says which and why, in sentences for the user.</summary>
public sealed class FileWritingException : Exception
{
    /// <summary>Creates the exception.</summary>
    /// <param name="message">What is wrong, in a sentence.</param>
    /// <param name="inner">What the system said; none where it was not asked.</param>
    public FileWritingException(string message, Exception? inner = null)
        : base(message, inner)
    {
    }
}
