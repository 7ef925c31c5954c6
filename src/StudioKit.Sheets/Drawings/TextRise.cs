namespace StudioKit.Sheets.Drawings;

/// <summary>Which height of a line of text stands at its point.</summary>
public enum TextRise
{
    /// <summary>The line the letters stand on.</summary>
    Baseline,

    /// <summary>Half the height of a capital letter.</summary>
    Middle,

    /// <summary>The top of a capital letter.</summary>
    Top,

    /// <summary>The top of a capital letter, a little below the point: a second line under one that stands on it.</summary>
    Below,
}
