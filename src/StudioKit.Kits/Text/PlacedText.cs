namespace StudioKit.Kits.Text;

/// <summary>Something written in a file, and where: line and column counted from 1.</summary>
internal abstract record PlacedText(SourceText Source, int Line, int Column);
