namespace StudioKit.Web.Results;

/// <summary>Asks for the sheets of a kit, or for one group of them.</summary>
/// <param name="Text">The kit's text.</param>
/// <param name="FileName">Its file's name.</param>
/// <param name="Group">Name of the group; empty where the list is asked for.</param>
/// <param name="Letter">Whether the paper is letter; otherwise it is A4.</param>
/// <param name="Inches">Whether the build sheet gives inches beside millimetres.</param>
/// <param name="Date">Date to print, as yyyy-MM-dd; empty for none.</param>
public sealed record SheetsRequest(string Text, string FileName, string Group, bool Letter, bool Inches, string Date);
