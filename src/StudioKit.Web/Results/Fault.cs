namespace StudioKit.Web.Results;

/// <summary>One thing wrong with the kit's text.</summary>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column in characters, counted from 1.</param>
/// <param name="IsError">Whether the kit cannot be read for it; otherwise it is a warning.</param>
/// <param name="Code">Code of the diagnostic.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Hint">What would be accepted; empty where the sentence says it all.</param>
public sealed record Fault(int Line, int Column, bool IsError, string Code, string Message, string Hint);
