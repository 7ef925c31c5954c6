namespace StudioKit.Web.Results;

/// <summary>Asks which parts a kit names.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="Parts">Parts beside it that are known so far, by <c>KIND/NAME</c>.</param>
public sealed record PartNamesRequest(string Text, IReadOnlyDictionary<string, string> Parts);
