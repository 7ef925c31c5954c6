using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>What a picture's sidecar says of its scale.</summary>
public sealed record RecordedScale
{
    /// <summary>Size of a pixel at the subject [µm]; &gt; 0.</summary>
    public required double MicrometresPerPixel { get; init; }

    /// <summary>One standard deviation of it over its value [1]; none where it is not known.</summary>
    public double? RelativeUncertainty { get; init; }

    /// <summary>Length of the bar drawn into the picture [µm]; none where there is no bar in it.</summary>
    public double? BarLengthMicrometres { get; init; }

    /// <summary>Pixels that the picture had when the scale was worked out; the scale holds for no other size.</summary>
    public PixelDimensions? Pixels { get; init; }

    /// <summary>File name of the original.</summary>
    public string Source { get; init; } = "";

    /// <summary>What the scale was worked out from, as a sentence.</summary>
    public string Origin { get; init; } = "";

    /// <summary>Name of the kit; empty where the scale came from no kit.</summary>
    public string Kit { get; init; } = "";

    /// <summary>Name of the framing in that kit; empty where the scale came from no framing.</summary>
    public string Framing { get; init; } = "";

    /// <summary>Magnification [1]; none where the scale came from no framing.</summary>
    public double? Magnification { get; init; }

    /// <summary>Whether a bar is drawn into the picture.</summary>
    public bool HasBar => BarLengthMicrometres is not null;

    /// <summary>Whether the scale holds for a picture of a size: not once it was cropped or made smaller, or where the sidecar belongs to another.</summary>
    /// <param name="pixels">Size of the picture, turned or not.</param>
    public bool HoldsFor(PixelDimensions pixels) =>
        Pixels is not { } own || (own.Longer == pixels.Longer && own.Shorter == pixels.Shorter);
}
