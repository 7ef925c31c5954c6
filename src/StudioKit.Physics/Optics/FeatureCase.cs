using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>A feature of a subject, and how it is photographed.</summary>
public sealed record FeatureCase
{
    /// <summary>Distance from one of its lines to the next, at the subject; &gt; 0 m.</summary>
    public required Length Spacing { get; init; }

    /// <summary>Its own contrast, (bright − dark)/(bright + dark) of what it reflects [1]; above 0, at most 1.</summary>
    public double Contrast { get; init; } = 1;

    /// <summary>Image over object size m.</summary>
    public required Magnification Magnification { get; init; }

    /// <summary>Effective f-number at that magnification [1]; &gt; 0.</summary>
    public required double EffectiveFNumber { get; init; }

    /// <summary>Distance between pixel centres on the sensor; &gt; 0 m.</summary>
    public required Length PixelPitch { get; init; }

    /// <summary>Length over which the picture smears, at the subject; ≥ 0 m.</summary>
    public Length Smear { get; init; }

    /// <summary>One over the distance from focused plane to entrance pupil [1/m]; 0 for a pupil at infinity.</summary>
    public double PupilVergence { get; init; }

    /// <summary>Wavelength λ [m]; &gt; 0.</summary>
    public double Wavelength { get; init; } = Diffraction.GreenLight;
}
