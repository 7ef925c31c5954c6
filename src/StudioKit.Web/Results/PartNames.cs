namespace StudioKit.Web.Results;

/// <summary>Parts that a kit names, by <c>KIND/NAME</c>.</summary>
/// <param name="Named">All of them.</param>
/// <param name="Missing">Those that neither lie beside it nor come with the page.</param>
public sealed record PartNames(IReadOnlyList<string> Named, IReadOnlyList<string> Missing);
