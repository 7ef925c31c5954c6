namespace StudioKit.Field.Pictures;

/// <summary>Brightness of a pixel as the eye mostly takes it: green for two, red and blue for one each.</summary>
internal static class Brightness
{
    /// <summary>What one code value of a grey pixel counts [1].</summary>
    public const int Weight = 4;

    /// <summary>Weighted sum of the codes of the first pixel.</summary>
    public static int Of(ReadOnlySpan<byte> rgba) => rgba[0] + (2 * rgba[1]) + rgba[2];
}
