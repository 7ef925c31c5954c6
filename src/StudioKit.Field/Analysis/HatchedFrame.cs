namespace StudioKit.Field.Analysis;

/// <summary>A frame small, with the background that is not white hatched and the regions that miss most named.</summary>
/// <param name="Width">Points across [1].</param>
/// <param name="Height">Points down [1].</param>
/// <param name="Rgba">Red, green, blue and 255 of each point, row by row from the top left.</param>
/// <param name="Labels">Names of the regions that are not white.</param>
public sealed record HatchedFrame(int Width, int Height, byte[] Rgba, IReadOnlyList<FrameLabel> Labels)
{
    private const int Enlarged = 2;
    private const int HatchSpacing = 8;

    /// <summary>Draws a frame.</summary>
    /// <param name="analysis">The frame.</param>
    public static HatchedFrame Of(FrameAnalysis analysis)
    {
        ArgumentNullException.ThrowIfNull(analysis);
        var (width, height) = (analysis.Thumbnail.Width * Enlarged, analysis.Thumbnail.Height * Enlarged);
        return new HatchedFrame(width, height, Pixels(analysis.Thumbnail, width, height), [.. LabelsOf(analysis, width, height)]);
    }

    // Hatching tells black on white print what colour tells the screen.
    private static byte[] Pixels(FrameThumbnail small, int width, int height)
    {
        var rgba = new byte[4 * width * height];
        for (var i = 0; i < width * height; i++)
        {
            var (y, x) = Math.DivRem(i, width);
            var point = (y / Enlarged * small.Width) + (x / Enlarged);
            (rgba[4 * i], rgba[(4 * i) + 1], rgba[(4 * i) + 2], rgba[(4 * i) + 3]) = small.Unclipped[point] && (x + y) % HatchSpacing < 2
                ? ((byte)200, (byte)0, (byte)0, (byte)255)
                : (small.Rgb[3 * point], small.Rgb[(3 * point) + 1], small.Rgb[(3 * point) + 2], (byte)255);
        }

        return rgba;
    }

    private static IEnumerable<FrameLabel> LabelsOf(FrameAnalysis analysis, int width, int height) =>
        from entry in analysis.Regions.Select((region, i) => (Region: region, Place: i))
        where entry.Region.StopsMissing >= 0.05
        select new FrameLabel(
            FormattableString.Invariant($"{entry.Region.Name}: {entry.Region.StopsMissing:0.0} stop under"),
            ((entry.Place % 3) + 0.5) * width / 3,
            ((entry.Place / 3) + 0.5) * height / 3);
}
