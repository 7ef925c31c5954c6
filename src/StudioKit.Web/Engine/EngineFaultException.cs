namespace StudioKit.Web.Engine;

/// <summary>The worker failed at a question; nothing of the kit is lost by it.</summary>
public sealed class EngineFaultException : Exception
{
    /// <summary>A failure without a word.</summary>
    public EngineFaultException()
    {
    }

    /// <summary>A failure.</summary>
    /// <param name="message">What the worker said.</param>
    public EngineFaultException(string message)
        : base(message)
    {
    }

    /// <summary>A failure with its cause.</summary>
    /// <param name="message">What the worker said.</param>
    /// <param name="innerException">The cause.</param>
    public EngineFaultException(string message, Exception innerException)
        : base(message, innerException)
    {
    }
}
