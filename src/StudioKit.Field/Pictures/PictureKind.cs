namespace StudioKit.Field.Pictures;

/// <summary>What kind of picture file the first bytes tell of.</summary>
public enum PictureKind
{
    /// <summary>Nothing is in it.</summary>
    Empty,

    /// <summary>JPEG (ISO/IEC 10918-1).</summary>
    Jpeg,

    /// <summary>PNG (ISO/IEC 15948).</summary>
    Png,

    /// <summary>TIFF (ISO 12639), or a raw file built like one.</summary>
    TiffOrRaw,

    /// <summary>A raw file.</summary>
    Raw,

    /// <summary>A picture or film in boxes (ISO/IEC 14496-12): HEIF, AVIF, or a raw file in it.</summary>
    BaseMedia,

    /// <summary>Something else.</summary>
    Other,
}
