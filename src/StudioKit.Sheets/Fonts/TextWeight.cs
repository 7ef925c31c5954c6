namespace StudioKit.Sheets.Fonts;

/// <summary>How heavy letters are.</summary>
public enum TextWeight
{
    /// <summary>Running text.</summary>
    Regular,

    /// <summary>What must be seen first.</summary>
    Bold,
}
