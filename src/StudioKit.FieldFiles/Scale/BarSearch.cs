using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Looks for a bar of ours in a corner of a picture while its rows stream by: a copy may have been parted from the sidecar that tells of it.</summary>
/// <remarks>The scale and the picture's size say where each pixel of the bar, its length and their edge would lie. Chance does not put both there.</remarks>
internal sealed class BarSearch
{
    // Strong compression leaves its marks about every stroke; half of the codes lie nearer to the other colour all the same.
    private const int FarthestCode = 64;
    private const double LeastShare = 0.9;
    private readonly BarStamp _stamp;
    private readonly Tally _ink = new();
    private readonly Tally _edge = new();

    private BarSearch(BarStamp stamp) => _stamp = stamp;

    /// <summary>Whether bar and edge lie where they would.</summary>
    public bool IsFound => (_ink.Darks(LeastShare) && _edge.Lights(LeastShare)) || (_ink.Lights(LeastShare) && _edge.Darks(LeastShare));

    /// <summary>A search in each corner that a bar can lie in.</summary>
    /// <param name="seen">The picture.</param>
    /// <param name="metresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
    public static IReadOnlyList<BarSearch> In(SeenPicture seen, double metresPerPixel) =>
    [
        .. Enum.GetValues<ScaleBarCorner>().Select(corner => ScaleBarPlace.For(seen, metresPerPixel, corner, ScaleBarImage.LabelWidth)).OfType<ScaleBarPlace>()
            .Select(place => new BarSearch(ScaleBarImage.Draw(seen, place, isWhite: false))),
    ];

    /// <summary>Compares the rows of a band that the bar would lie in.</summary>
    public void Visit(PictureBand band)
    {
        var box = _stamp.Box;
        for (var row = Math.Max(box.Top, band.FirstRow); row < Math.Min(box.Bottom, band.FirstRow + band.Rows); row++)
        {
            var pixels = band.Row(row - band.FirstRow);
            for (var column = box.Left; column < box.Right; column++)
            {
                // Pixels that are covered in part tell nothing.
                var (white, black) = _stamp.At(column, row);
                (black == 255 ? _ink : white == 255 ? _edge : null)?.Count(pixels.Slice(4 * column, 3));
            }
        }
    }

    private sealed class Tally
    {
        private int _all;
        private int _dark;
        private int _light;

        public bool Darks(double share) => _all > 0 && _dark >= share * _all;

        public bool Lights(double share) => _all > 0 && _light >= share * _all;

        public void Count(ReadOnlySpan<byte> pixel)
        {
            _all++;
            _dark += Math.Max(pixel[0], Math.Max(pixel[1], pixel[2])) <= FarthestCode ? 1 : 0;
            _light += Math.Min(pixel[0], Math.Min(pixel[1], pixel[2])) >= 255 - FarthestCode ? 1 : 0;
        }
    }
}
