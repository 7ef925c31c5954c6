namespace StudioKit.Web.Results;

/// <summary>The pages of a document to look at.</summary>
/// <param name="Pages">Each page as SVG.</param>
public sealed record SheetPages(IReadOnlyList<string> Pages);
