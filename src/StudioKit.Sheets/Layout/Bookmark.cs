namespace StudioKit.Sheets.Layout;

/// <summary>An entry of the outline and of the table of contents.</summary>
/// <param name="Title">What the entry says.</param>
/// <param name="Level">Depth, 1 at the top.</param>
/// <param name="Y">Height on its page [mm].</param>
internal sealed record Bookmark(string Title, int Level, double Y);
