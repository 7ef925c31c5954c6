namespace StudioKit.Field.Log.Archive;

/// <summary>An archive says something that cannot be taken in; the diagnostic says what and where.</summary>
internal sealed class ArchiveFaultException(string code, string message, string hint = "") : Exception(message)
{
    /// <summary>Code of the diagnostic.</summary>
    public string Code { get; } = code;

    /// <summary>What would be accepted.</summary>
    public string Hint { get; } = hint;
}
