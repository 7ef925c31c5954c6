using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>A sensor and everything in front of it, in the order sensor, teleconverter, extension tubes, lens, close-up lenses.</summary>
public sealed record OpticalStackCase
{
    /// <summary>The lens.</summary>
    public required LensOptics Lens { get; init; }

    /// <summary>Longer side of the sensor; &gt; 0 m.</summary>
    public required Length SensorWidth { get; init; }

    /// <summary>Shorter side of the sensor; &gt; 0 m.</summary>
    public required Length SensorHeight { get; init; }

    /// <summary>f-number marked on the lens; behind a converter still that of the lens alone.</summary>
    public FNumber Aperture { get; init; } = new(16);

    /// <summary>Length of all extension tubes together; ≥ 0 m. They stand between lens and converter.</summary>
    public Length Extension { get; init; }

    /// <summary>Power of all close-up lenses together, which stand before the front glass; ≥ 0 dioptres.</summary>
    public ReciprocalLength CloseUpPower { get; init; }

    /// <summary>Factor of the teleconverter k [1]; ≥ 1, and 1 for none.</summary>
    public double TeleconverterFactor { get; init; } = 1;

    /// <summary>How much longer the teleconverter makes the outfit; ≥ 0 m.</summary>
    public Length TeleconverterLength { get; init; }

    /// <summary>Lens mount to sensor; ≥ 0 m.</summary>
    public Length FlangeDistance { get; init; } = Length.FromMillimeters(44);

    /// <summary>
    /// Whether <see cref="Aperture"/> is what a camera shows that already counts the lens's own focusing and the converter. Tubes and close-up
    /// lenses tell the camera nothing, so what they cost is still added.
    /// </summary>
    public bool ApertureIsEffective { get; init; }
}
