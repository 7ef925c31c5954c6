namespace StudioKit.Sheets.Drawings;

/// <summary>How a line is broken up; the meanings are those of ISO 128.</summary>
public enum LineStyle
{
    /// <summary>Unbroken: visible edges.</summary>
    Solid,

    /// <summary>Dashes: hidden edges.</summary>
    Dashed,

    /// <summary>Long dash and dot: centre lines.</summary>
    Chain,
}
