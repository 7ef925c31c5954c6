using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>A flash at work: a bright flat window (bare head, dome or softbox front) with its place, aim and beam.</summary>
/// <remarks>Every point of the window throws the same beam, so the luminance of a wide window is I/(A·cos θ).</remarks>
public sealed record Emitter
{
    /// <summary>Centre of the bright window.</summary>
    public required Position Centre { get; init; }

    /// <summary>How the window lies; straight up unless given.</summary>
    public Orientation Orientation { get; init; } = Orientation.FacingUp;

    /// <summary>Width of the window.</summary>
    public required Length Width { get; init; }

    /// <summary>Height of the window.</summary>
    public required Length Height { get; init; }

    /// <summary>The beam.</summary>
    public required LightLobe Lobe { get; init; }

    /// <summary>Luminous intensity on the axis times time, I₀ [cd·s]; ≥ 0. See <see cref="Exposure.Flashes.FlashExposure.IntensityTime"/>.</summary>
    public required double AxialIntensityTime { get; init; }

    /// <summary>The flash's body, which casts a shadow; none unless given.</summary>
    public BoxObstacle? Body { get; init; }

    /// <summary>Luminous flux times time, Φ = I₀·∫(I/I₀)dω [lm·s].</summary>
    [Source("Walsh1958", "luminous flux as the integral of intensity over solid angle")]
    public double FluxTime => AxialIntensityTime * Lobe.FluxOverAxialIntensity;

    /// <summary>The same emitter with a body behind its window.</summary>
    /// <param name="depth">How far the body reaches behind the window; &gt; 0 m.</param>
    public Emitter WithBody(Length depth) => this with
    {
        // A millimetre back, so that the window's own light is not caught by the body's front.
        Body = new BoxObstacle(
            Centre.Along(Orientation.Axis, -(depth.Meters / 2) - 0.001), Orientation, Width, Height, depth),
    };
}
