namespace StudioKit.FieldFiles.Pictures;

/// <summary>How a picture file is coded.</summary>
public enum PictureFormat
{
    /// <summary>JPEG (ISO/IEC 10918-1).</summary>
    Jpeg,

    /// <summary>PNG (ISO/IEC 15948).</summary>
    Png,

    /// <summary>TIFF (ISO 12639 and its descendants).</summary>
    Tiff,
}
