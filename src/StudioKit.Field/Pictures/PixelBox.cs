namespace StudioKit.Field.Pictures;

/// <summary>A rectangle in a picture, in pixels from its top left corner.</summary>
/// <param name="Left">Left edge [1].</param>
/// <param name="Top">Top edge [1].</param>
/// <param name="Right">Right edge [1].</param>
/// <param name="Bottom">Bottom edge [1].</param>
public readonly record struct PixelBox(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Middle across [1].</summary>
    public double Middle => (Left + Right) / 2;
}
