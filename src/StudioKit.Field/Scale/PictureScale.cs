namespace StudioKit.Field.Scale;

/// <summary>Scale of one picture.</summary>
/// <param name="MetresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
/// <param name="Basis">What it was worked out from.</param>
public sealed record PictureScale(double MetresPerPixel, ScaleBasis Basis)
{
    /// <summary>One standard deviation over the value [1]; none where it is not known.</summary>
    public double? RelativeUncertainty { get; init; }

    /// <summary>How the file came from what the camera recorded.</summary>
    public PictureMaking Making { get; init; } = new();

    /// <summary>What to bear in mind, one sentence each.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];
}
