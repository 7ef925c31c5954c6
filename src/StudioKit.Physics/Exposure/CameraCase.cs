using StudioKit.Physics.Exposure.Metering;

namespace StudioKit.Physics.Exposure;

/// <summary>Camera and lens as set for one picture.</summary>
public sealed record CameraCase
{
    /// <summary>f-number set on the lens.</summary>
    public required FNumber Aperture { get; init; }

    /// <summary>f-number that governs the light at the sensor; the one set where it is not given, as at infinity focus.</summary>
    public FNumber? EffectiveFNumber { get; init; }

    /// <summary>Shutter speed.</summary>
    public ShutterSpeed Shutter { get; init; } = new(1.0 / 128);

    /// <summary>Sensor speed.</summary>
    public IsoSpeed Iso { get; init; } = new(100);

    /// <summary>Loss in filters before the lens, counted positive.</summary>
    public Stops FilterLoss { get; init; }

    /// <summary>Loss in the walls of a clear cover, or in water and its tank, between what is photographed and the lens, counted positive.</summary>
    public Stops CoverLoss { get; init; }

    /// <summary>Lens factor q of ISO 12232 [1]; above 0, at most 1.</summary>
    public double LensFactor { get; init; } = SensorExposure.UsualLensFactor;

    /// <summary>How far the camera's own clipping lies above ISO 12232 saturation, 78/S.</summary>
    public Stops ClipPoint { get; init; }

    /// <summary>Stops from a correctly exposed mid-tone of 18 % up to 78/S.</summary>
    public Stops MidToneUnderClipping { get; init; } = new(SensorExposure.MidToneUnderClipping);

    /// <summary>Effective over set f-number [1].</summary>
    public double ApertureRatio => EffectiveFNumber is { } effective ? effective.Value / Aperture.Value : 1;

    /// <summary>The effective f-number, given or not.</summary>
    public FNumber Effective => EffectiveFNumber ?? Aperture;

    /// <summary>The same lens at the same magnification, set to another f-number.</summary>
    public CameraCase WithAperture(FNumber aperture) =>
        this with { Aperture = aperture, EffectiveFNumber = new FNumber(aperture.Value * ApertureRatio) };
}
