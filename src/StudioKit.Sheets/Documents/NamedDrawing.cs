using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Documents;

/// <summary>A drawing with the name of its file.</summary>
internal sealed record NamedDrawing(string Name, Drawing Drawing);
