namespace StudioKit.Web.Results;

/// <summary>A group of files that can be made.</summary>
/// <param name="Name">Its name: a file's, or that of a family of files.</param>
/// <param name="Title">What it is, in a few words.</param>
/// <param name="HasPages">Whether it has pages to look at.</param>
public sealed record SheetOffer(string Name, string Title, bool HasPages);
