using StudioKit.Field;
using StudioKit.Field.Pictures;

namespace StudioKit.Web.Engine.Frames;

/// <summary>A decoded picture as rows, a band at a time, so that our own memory does not grow with it.</summary>
/// <param name="name">Its file's name.</param>
/// <param name="picture">The picture.</param>
/// <param name="head">What its file says.</param>
internal sealed class DecodedRows(string name, IDecodedPicture picture, PictureHead head) : IRowSource
{
    // The same bands as those that files are read in natively.
    private const int MostBandRows = 64;
    private const int BandPixels = 2_000_000;

    /// <inheritdoc/>
    public string Name { get; } = name;

    /// <inheritdoc/>
    public int Width => picture.Width;

    /// <inheritdoc/>
    public int Height => picture.Height;

    /// <inheritdoc/>
    public FrameSettings Settings => head.Settings;

    /// <inheritdoc/>
    public double BrightnessStep => head.BrightnessStep;

    /// <inheritdoc/>
    public FieldDiagnostic? Read(Action<PictureBand> visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var most = Math.Clamp(BandPixels / Width, 1, MostBandRows);
        var band = new byte[most * Width * 4];
        for (var first = 0; first < Height; first += most)
        {
            var rows = Math.Min(most, Height - first);
            picture.Copy(first, band.AsSpan(0, rows * Width * 4));
            visit(new PictureBand(band, Width, first, rows));
        }

        return null;
    }
}
