using StudioKit.Field.Scale;

namespace StudioKit.Field.Plates;

/// <summary>One portrait in its place on a page, in millimetres from the page's top left corner.</summary>
/// <param name="Picture">The portrait.</param>
/// <param name="Left">Left edge of the picture [mm].</param>
/// <param name="Top">Top edge of the picture [mm].</param>
/// <param name="Width">Width on paper [mm].</param>
/// <param name="Height">Height on paper [mm].</param>
/// <param name="PrintScale">Size on paper over size in life [1]; 2 is twice life size.</param>
/// <param name="Bar">Scale bar for this picture.</param>
/// <param name="BarWidth">Length of the bar on paper [mm].</param>
public sealed record PlatePlace(
    PlatePicture Picture, double Left, double Top, double Width, double Height, double PrintScale, ScaleBar Bar, double BarWidth)
{
    /// <summary>Left edge of the place, which the caption keeps to [mm].</summary>
    public double PlaceLeft { get; init; }

    /// <summary>Width of the place [mm].</summary>
    public double PlaceWidth { get; init; }
}
