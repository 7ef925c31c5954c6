namespace StudioKit.Web.Results;

/// <summary>Asks for values to be written into a kit's text.</summary>
/// <param name="Text">The text.</param>
/// <param name="Changes">The values, in the order in which they are written.</param>
public sealed record EditRequest(string Text, IReadOnlyList<KitChangeLine> Changes);
