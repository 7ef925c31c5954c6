namespace StudioKit.Web.Results;

/// <summary>Asks what something typed into a field would mean.</summary>
/// <param name="Text">The kit's text, for the names in it.</param>
/// <param name="Path">Path of the field.</param>
/// <param name="Typed">What was typed.</param>
public sealed record FieldCheckRequest(string Text, string Path, string Typed);
