namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>What the samples of a PNG are; the numbers are those of the file.</summary>
internal enum PngColour
{
    Grey = 0,
    Rgb = 2,
    Palette = 3,
    GreyAlpha = 4,
    RgbAlpha = 6,
}
