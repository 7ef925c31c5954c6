namespace StudioKit.Web.Results;

/// <summary>Asks what could stand at a place of a text.</summary>
/// <param name="Text">The text.</param>
/// <param name="Position">The place, in UTF-16 units from 0.</param>
public sealed record CompleteRequest(string Text, int Position);
