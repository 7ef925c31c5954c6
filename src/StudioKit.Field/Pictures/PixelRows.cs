namespace StudioKit.Field.Pictures;

/// <summary>A picture whose pixels are in memory already.</summary>
public sealed class PixelRows : IRowSource
{
    private readonly byte[] _rgba;

    /// <summary>Wraps the pixels.</summary>
    /// <param name="name">How it is called in reports.</param>
    /// <param name="width">Pixels in a stored row [1]; ≥ 1.</param>
    /// <param name="height">Stored rows [1]; ≥ 1.</param>
    /// <param name="rgba">Rows one after another, four bytes a pixel: red, green, blue and one not used.</param>
    /// <exception cref="ArgumentException">There are more or fewer pixels than the size says.</exception>
    public PixelRows(string name, int width, int height, byte[] rgba)
    {
        ArgumentNullException.ThrowIfNull(rgba);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(height, 1);
        if (rgba.LongLength != 4L * width * height)
        {
            throw new ArgumentException("The pixels do not fill the picture.", nameof(rgba));
        }

        (Name, Width, Height, _rgba) = (name, width, height, rgba);
    }

    /// <inheritdoc/>
    public string Name { get; }

    /// <inheritdoc/>
    public int Width { get; }

    /// <inheritdoc/>
    public int Height { get; }

    /// <inheritdoc/>
    public FrameSettings Settings { get; init; } = new();

    /// <inheritdoc/>
    public double BrightnessStep { get; init; }

    /// <inheritdoc/>
    public FieldDiagnostic? Read(Action<PictureBand> visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        visit(new PictureBand(_rgba, Width, 0, Height));
        return null;
    }
}
