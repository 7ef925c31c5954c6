namespace StudioKit.Sheets.Fonts;

/// <summary>How heavy letters are.</summary>
public enum TextWeight
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>What must be seen first.</summary>
    Bold,

    /// <summary>Large figures: bold, with a plain zero, which a slashed one is mistaken for an 8 at a distance.</summary>
    Figures,
}
