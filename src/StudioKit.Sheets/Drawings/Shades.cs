namespace StudioKit.Sheets.Drawings;

/// <summary>How light the greys are, from 0 for black to 255 for white; the same in both writers.</summary>
internal static class Shades
{
    public const byte LightGrey = 230;

    public const byte Grey = 128;
}
