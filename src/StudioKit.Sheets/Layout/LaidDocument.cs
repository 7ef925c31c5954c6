namespace StudioKit.Sheets.Layout;

/// <summary>A document laid out on pages.</summary>
/// <param name="Document">The pages.</param>
/// <param name="Problems">What did not fit and why, in words for a person; empty where all did.</param>
internal sealed record LaidDocument(PagedDocument Document, IReadOnlyList<string> Problems);
