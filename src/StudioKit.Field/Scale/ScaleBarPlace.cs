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
    private const double ThicknessShare = 0.008;
    private const double MarginShare = 0.03;

    /// <summary>The place of a bar in a corner.</summary>
    /// <param name="seen">The picture.</param>
    /// <param name="metresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
    /// <param name="corner">Corner that it goes to.</param>
    /// <exception cref="ArgumentOutOfRangeException">The size of a pixel is not above zero, or not finite.</exception>
    public static ScaleBarPlace For(SeenPicture seen, double metresPerPixel, ScaleBarCorner corner)
    {
        var bar = ScaleBar.For(metresPerPixel, seen.Width);
        var unit = Math.Min(seen.Width, seen.Height);
        var (text, thickness) = (Math.Max(8, TextShare * unit), Math.Max(2, ThicknessShare * unit));
        var box = BoxOf(seen, corner, Math.Max(bar.Pixels, 4 * text), 1.6 * text, MarginShare * unit);
        var line = new PixelBox(box.Middle - (bar.Pixels / 2), box.Bottom - thickness, box.Middle + (bar.Pixels / 2), box.Bottom);
        return new ScaleBarPlace(bar, box, line, text, box.Bottom - (1.8 * thickness));
    }

    /// <summary>Whether white stands out better than black there.</summary>
    /// <param name="seen">The picture.</param>
    /// <param name="rgba">Its stored rows, four bytes a pixel: red, green, blue and one not used.</param>
    public bool IsOnDark(SeenPicture seen, ReadOnlySpan<byte> rgba)
    {
        var ((x1, y1), (x2, y2)) = (seen.Stored(Box.Left, Box.Top), seen.Stored(Box.Right, Box.Bottom));
        var (left, right) = ((int)Math.Max(0, Math.Min(x1, x2)), (int)Math.Min(seen.StoredWidth, Math.Max(x1, x2)));
        var (top, bottom) = ((int)Math.Max(0, Math.Min(y1, y2)), (int)Math.Min(seen.StoredHeight, Math.Max(y1, y2)));
        var (sum, count) = (0L, 0L);
        for (var y = top; y < bottom; y++)
        {
            for (var x = left; x < right; x++)
            {
                sum += Brightness.Of(rgba[(4 * ((y * seen.StoredWidth) + x))..]);
                count += Brightness.Weight;
            }
        }

        // Black and white stand out equally well where the contrast ratio to both is the same: at 18 % of light.
        return count > 0 && sum / (double)count < 255 * ToneCurveIec61966.Encoded(0.18);
    }

    private static PixelBox BoxOf(SeenPicture seen, ScaleBarCorner corner, double width, double height, double margin)
    {
        var left = corner is ScaleBarCorner.BottomLeft or ScaleBarCorner.TopLeft ? margin : seen.Width - margin - width;
        var top = corner is ScaleBarCorner.TopLeft or ScaleBarCorner.TopRight ? margin : seen.Height - margin - height;
        return new PixelBox(left, top, left + width, top + height);
    }
}
