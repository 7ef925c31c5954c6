using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>What the scale of a picture was worked out from.</summary>
public abstract record ScaleBasis
{
    private ScaleBasis()
    {
    }

    /// <summary>The size of a pixel was given.</summary>
    public sealed record Given : ScaleBasis;

    /// <summary>A picture of a millimetre rule at the same focus.</summary>
    /// <param name="File">File name of that picture.</param>
    /// <param name="Pixels">Its size.</param>
    public sealed record Rule(string File, PixelDimensions Pixels) : ScaleBasis;

    /// <summary>The sensor and the magnification.</summary>
    public sealed record Framed : ScaleBasis
    {
        /// <summary>Longer side of the sensor [m]; &gt; 0.</summary>
        public required double SensorWidth { get; init; }

        /// <summary>Image over object size [1]; &gt; 0.</summary>
        public required double Magnification { get; init; }

        /// <summary>Pixels that the whole sensor gives; none where nothing tells.</summary>
        public PixelDimensions? CameraPixels { get; init; }

        /// <summary>Name of the kit; empty where sensor and magnification were given by themselves.</summary>
        public string Kit { get; init; } = "";

        /// <summary>Name of the framing in that kit; empty where there is none.</summary>
        public string Framing { get; init; } = "";
    }
}
