using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>A printed document with the name of its file, for when it is written alone.</summary>
internal sealed record NamedChapter(string FileName, Chapter Chapter);
