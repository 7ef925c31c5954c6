namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>Tags of TIFF 6.0, of TIFF/EP (ISO 12234-2) and the values of theirs that are asked for here.</summary>
internal static class TiffTags
{
    public const ushort SubfileType = 254;
    public const ushort Width = 256;
    public const ushort Height = 257;
    public const ushort Compression = 259;
    public const ushort Photometric = 262;
    public const ushort StripOffsets = 273;
    public const ushort StripByteCounts = 279;
    public const ushort TileOffsets = 324;
    public const ushort TileByteCounts = 325;
    public const ushort SubDirectories = 330;
    public const ushort PreviewOffset = 513;
    public const ushort PreviewLength = 514;

    public const int OldJpeg = 6;
    public const int Jpeg = 7;
    public const int ColourFilterArray = 32803;
    public const int LinearRaw = 34892;
}
