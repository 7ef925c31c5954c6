namespace StudioKit.Sheets;

/// <summary>Paper that home printers take.</summary>
public enum Paper
{
    /// <summary>ISO 216 A4, 210 mm × 297 mm.</summary>
    A4,

    /// <summary>ANSI letter, 8.5 in × 11 in.</summary>
    Letter,
}
