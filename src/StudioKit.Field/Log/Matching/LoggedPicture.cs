using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;

namespace StudioKit.Field.Log.Matching;

/// <summary>A picture to be logged, as far as its files tell.</summary>
/// <param name="FileName">File name, without folder.</param>
/// <param name="Settings">What the file says of how it was taken.</param>
/// <param name="Pixels">Size.</param>
/// <param name="Scale">What its sidecar says of its scale; none where there is none.</param>
public sealed record LoggedPicture(string FileName, FrameSettings Settings, PixelDimensions Pixels, RecordedScale? Scale)
{
    /// <summary>The scale where it holds for the picture as it is now.</summary>
    public RecordedScale? ValidScale => Scale is { } scale && scale.HoldsFor(Pixels) ? scale : null;
}
