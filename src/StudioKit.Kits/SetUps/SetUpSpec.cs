using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Kits.SetUps;

/// <summary>One way of lighting, with its targets and limits.</summary>
public sealed record SetUpSpec
{
    // A sheet an arm's length behind throws little light round the subject and shows no shadow of it (common practice in published accounts).
    private static readonly Length UsualUpright = Length.FromCentimeters(30);
    private static readonly Length UsualBackground = Length.FromMeters(1);

    private readonly Length? _backgroundDistance;

    /// <summary>Name on the cards; unique among the set-ups.</summary>
    public required string Name { get; init; }

    /// <summary>Which way of lighting.</summary>
    public required SetUpKind Kind { get; init; }

    /// <summary>Names of the lenses used; all where the kit names none.</summary>
    public ValueList<string> Lenses { get; init; } = [];

    /// <summary>Magnifications that the set-up is used at; all that its lenses have where the kit gives none.</summary>
    public ValueList<Magnification> Magnifications { get; init; } = [];

    /// <summary>Names of the subjects; all where the kit names none.</summary>
    public ValueList<string> Subjects { get; init; } = [];

    /// <summary>f-number to set; the sharpest over the subject's depth where the kit says <c>best</c>.</summary>
    public FNumber? Aperture { get; init; } = new(16);

    /// <summary>Shutter speed; the camera's flash sync where the kit gives none.</summary>
    public ShutterSpeed? Shutter { get; init; }

    /// <summary>ISO speed to stay near; the camera's lowest where the kit gives none.</summary>
    public IsoSpeed? Iso { get; init; }

    /// <summary>Ambient light that the set-up is planned for, as dusk is not noon; the site's where the kit gives none.</summary>
    public ExposureValue? Ambient { get; init; }

    /// <summary>How high the subject sits over the ground, where it does not sit on the panel (common practice, no source).</summary>
    public Length HeightOverGround { get; init; } = Length.FromCentimeters(30);

    /// <summary>Ambient light metered on the subject, where that differs from the background's, which <see cref="Ambient"/> is then; none where it was not metered apart.</summary>
    public ExposureValue? SubjectAmbient { get; init; }

    /// <summary>Ambient light that the set-up is photographed in; as far from what it is planned for as its exposures work, where the kit gives none.</summary>
    public LightRange? LightWindow { get; init; }

    /// <summary>Hours of the day that the set-up is photographed in; any where the kit gives none.</summary>
    public ClockRange? Clock { get; init; }

    /// <summary>Angles of the line of sight under the horizontal; 90° looks straight down; key <c>camera-pitch</c>.</summary>
    public ValueList<Angle> CameraPitches { get; init; } = [Angle.FromDegrees(60)];

    /// <summary>Turns of the camera about its line of sight; 90° is an upright frame; key <c>camera-roll</c>.</summary>
    public ValueList<Angle> CameraRolls { get; init; } = [Angle.Zero];

    /// <summary>The flashes at work.</summary>
    public ValueList<LightSpec> Lights { get; init; } = [];

    /// <summary>Least stops by which the visible panel lies above clipping.</summary>
    public Stops TargetWhiteMargin { get; init; } = new(1.0 / 3);

    /// <summary>Shadow lift by veiling glare that is still accepted on a mid-tone; bounds the brightest visible point.</summary>
    public Stops VeilLimit { get; init; } = new(0.7);

    /// <summary>How far daylight on the subject must stay under the flash in a white-background set-up.</summary>
    public Stops AmbientBelowFlash { get; init; } = new(3);

    /// <summary>Level of the fill where the kit gives none, and does not meter the subject apart (common practice, no source).</summary>
    public static readonly Stops UsualFill = new(-1);

    /// <summary>Level of the fill against correct exposure, negative under it; none where the kit gives none.</summary>
    public Stops? FillLevel { get; init; }

    /// <summary>How far the ambient background is pushed under its metered exposure in a dark-background set-up.</summary>
    public Stops AmbientUnder { get; init; } = new(4);

    /// <summary>Level of the rim light against the key.</summary>
    public Stops RimLevel { get; init; } = new(0);

    /// <summary>Subject to background; what is usual, before an upright sheet or elsewhere, where the kit gives none.</summary>
    public Length BackgroundDistance
    {
        get => _backgroundDistance ?? (Upright is null ? UsualBackground : UsualUpright);
        init => _backgroundDistance = value;
    }

    /// <summary>Mean reflectance of the background, as a flash meter sees it [1]; above 0, at most 1. A mid-tone is common practice, no source.</summary>
    public double BackgroundReflectance { get; init; } = 0.18;

    /// <summary>Share of the metered frame that the subject covers [1]; from its length where the kit gives none.</summary>
    public double? MeteredShare { get; init; }

    /// <summary>Name of the filter before the lens; none where the kit gives none.</summary>
    public string? Filter { get; init; }

    /// <summary>Name of the clear cover over the animal, or of the tank that it swims in; none where the kit gives none.</summary>
    public string? Cover { get; init; }

    /// <summary>Name of the sheet that stands behind the subject; none where the kit gives none.</summary>
    public string? Upright { get; init; }

    /// <summary>Whether the subject stands where it grows or sits, with a sheet behind it, and not on the panel.</summary>
    public bool IsBeforeUpright => Upright is not null && !Lights.Any(light => light.Role == LightRole.Below);

    /// <summary>Name of what the camera rests on; the free hand where the kit gives none.</summary>
    public string? Support { get; init; }

    /// <summary>Name of the radio on the camera; the kit's first sender where the kit names none.</summary>
    public string? Sender { get; init; }

    /// <summary>Names of what is put up against sun and wind.</summary>
    public ValueList<string> Shelters { get; init; } = [];

    /// <summary>Share of the sun's own light in the ambient light, before any shade is put up [1]; from the day or the light itself where the kit gives none.</summary>
    public double? SunShare { get; init; }

    /// <summary>Whether it is for a subject: for all where the kit names none.</summary>
    /// <param name="subject">Name of the subject.</param>
    public bool IsFor(string subject) => Subjects.Count == 0 || Subjects.Contains(subject);
}
