namespace StudioKit.Web.Storage;

/// <summary>Something could not be kept on this device.</summary>
public sealed class KeepingException : Exception
{
    /// <summary>A refusal without a word.</summary>
    public KeepingException()
        : this(KeepingTrouble.Refused)
    {
    }

    /// <summary>A refusal.</summary>
    /// <param name="message">What the browser said.</param>
    public KeepingException(string message)
        : base(message)
    {
    }

    /// <summary>A refusal with its cause.</summary>
    /// <param name="message">What the browser said.</param>
    /// <param name="innerException">The cause.</param>
    public KeepingException(string message, Exception? innerException)
        : base(message, innerException)
    {
    }

    /// <summary>A refusal of a kind.</summary>
    /// <param name="trouble">Why.</param>
    /// <param name="innerException">The cause.</param>
    public KeepingException(KeepingTrouble trouble, Exception? innerException = null)
        : base(trouble.ToString(), innerException) => Trouble = trouble;

    /// <summary>Why.</summary>
    public KeepingTrouble Trouble { get; } = KeepingTrouble.Refused;
}
