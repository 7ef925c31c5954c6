namespace StudioKit.Sheets.Fonts;

/// <summary>A stretch of text that one font file can print.</summary>
internal readonly record struct TextRun(FontFace Face, string Text);
