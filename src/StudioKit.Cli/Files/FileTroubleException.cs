namespace StudioKit.Cli.Files;

/// <summary>A file could not be read or written; the message says which and why, in a sentence for the user.</summary>
internal sealed class FileTroubleException(string message, Exception? inner = null) : Exception(message, inner);
