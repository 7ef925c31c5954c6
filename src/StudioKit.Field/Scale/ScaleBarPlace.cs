using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>Where a scale bar and its length go in a picture as seen, in pixels from its top left corner.</summary>
/// <param name="Bar">The bar.</param>
/// <param name="Box">Room that bar and length take up together.</param>
/// <param name="Line">The bar itself.</param>
/// <param name="TextSize">Height of the letters' body [1].</param>
/// <param name="Baseline">Where the letters stand, centred over the bar [1].</param>
public sealed record ScaleBarPlace(ScaleBar Bar, PixelBox Box, PixelBox Line, double TextSize, double Baseline)
{
    // Shares of the picture's shorter side: legible when the picture is printed 60 mm wide.
    private const double TextShare = 0.035;
    private const double LeastText = 12;

    // Room for letters over their line, in shares of their size, and between them and the bar; the tail of a µ hangs into it.
    private const double LetterShare = 0.85;
    private const double GapShare = 0.35;
    private const double ThicknessShare = 0.008;
    private const double MarginShare = 0.03;

    /// <summary>The place of a bar in a corner.</summary>
    /// <param name="seen">The picture.</param>
    /// <param name="metresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
    /// <param name="corner">Corner that it goes to.</param>
    /// <param name="labelWidth">Width of a label in letters of size 1 [1].</param>
    /// <returns>The place; none where the picture is too small for letters that can be read.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size of a pixel is not above zero, or not finite.</exception>
    public static ScaleBarPlace? For(SeenPicture seen, double metresPerPixel, ScaleBarCorner corner, Func<string, double> labelWidth)
    {
        ArgumentNullException.ThrowIfNull(labelWidth);
        var bar = ScaleBar.For(metresPerPixel, seen.Width);
        var unit = Math.Min(seen.Width, seen.Height);
        var (text, thickness, margin) = (Math.Max(LeastText, TextShare * unit), Math.Max(2, ThicknessShare * unit), Math.Max(3, MarginShare * unit));
        var (width, height) = (Math.Max(bar.Pixels, text * labelWidth(bar.Label)), (LetterShare * text) + (GapShare * text) + thickness);
        if (width + (2 * margin) > seen.Width || height + (2 * margin) > seen.Height)
        {
            return null;
        }

        var box = BoxOf(seen, corner, width, height, margin);
        var line = new PixelBox(box.Middle - (bar.Pixels / 2), box.Bottom - thickness, box.Middle + (bar.Pixels / 2), box.Bottom);
        return new ScaleBarPlace(bar, box, line, text, line.Top - (GapShare * text));
    }

    /// <summary>Whether white stands out better than black.</summary>
    /// <param name="brightness">Mean code of what lies behind [1]; 0 to 255.</param>
    /// <remarks>Black and white stand out equally well where the contrast ratio to both is the same: at 18 % of light.</remarks>
    public static bool IsWhiteOn(double brightness) => brightness < 255 * ToneCurveIec61966.Encoded(0.18);

    private static PixelBox BoxOf(SeenPicture seen, ScaleBarCorner corner, double width, double height, double margin)
    {
        var left = corner is ScaleBarCorner.BottomLeft or ScaleBarCorner.TopLeft ? margin : seen.Width - margin - width;
        var top = corner is ScaleBarCorner.TopLeft or ScaleBarCorner.TopRight ? margin : seen.Height - margin - height;
        return new PixelBox(left, top, left + width, top + height);
    }
}
