namespace StudioKit.FieldFiles.Metadata;

/// <summary>What a picture file can say of where it was taken, and by whom, beside the picture itself.</summary>
[Flags]
public enum TellingMetadata
{
    /// <summary>Nothing.</summary>
    None = 0,

    /// <summary>Coordinates, in an Exif, XMP or GeoTIFF block.</summary>
    Position = 1,

    /// <summary>Serial numbers of body or lens, or the owner's name.</summary>
    SerialNumber = 2,

    /// <summary>A maker's block, whose contents only the maker knows: often serial numbers, sometimes positions.</summary>
    MakerNote = 4,

    /// <summary>A small picture inside the file, which can carry metadata of its own and show what was cropped away.</summary>
    EmbeddedPicture = 8,

    /// <summary>Captions, keywords, place names, dates, history or any other text.</summary>
    Text = 16,
}
