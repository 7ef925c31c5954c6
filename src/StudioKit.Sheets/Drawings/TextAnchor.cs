namespace StudioKit.Sheets.Drawings;

/// <summary>Which end of a line of text stands at its point.</summary>
public enum TextAnchor
{
    /// <summary>The text starts there.</summary>
    Start,

    /// <summary>The text is centred there.</summary>
    Middle,

    /// <summary>The text ends there.</summary>
    End,
}
