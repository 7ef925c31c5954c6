namespace StudioKit.Web.Results;

/// <summary>Asks for parts of the library.</summary>
/// <param name="Kind">Kind of part, e.g. <c>pipes</c>.</param>
/// <param name="Search">Words that each must be mentioned; empty for all.</param>
public sealed record PartsRequest(string Kind, string Search);
