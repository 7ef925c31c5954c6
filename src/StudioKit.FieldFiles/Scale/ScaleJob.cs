using StudioKit.Field.Scale;

namespace StudioKit.FieldFiles.Scale;

/// <summary>One picture to put a scale bar on.</summary>
/// <param name="Source">Picture to read; never changed.</param>
/// <param name="Target">Copy to write.</param>
/// <param name="MetresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
/// <param name="Origin">Where the scale comes from, for the sidecar, e.g. <c>framing 1:2</c>.</param>
/// <param name="Corner">Corner that the bar goes to.</param>
/// <param name="Replace">Whether a file at the target may be replaced.</param>
public sealed record ScaleJob(
    string Source,
    string Target,
    double MetresPerPixel,
    string Origin,
    ScaleBarCorner Corner = ScaleBarCorner.BottomRight,
    bool Replace = false);
