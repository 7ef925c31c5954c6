using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Starting exposure for one framing in one set-up: what a card prints.</summary>
public sealed record ExposurePlan
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Which way of lighting.</summary>
    public required SetUpKind Kind { get; init; }

    /// <summary>Whether the subject stands on the panel, lit from below.</summary>
    public bool OnPanel { get; init; }

    /// <summary>Whether the subject is photographed where it sits or grows.</summary>
    public bool WhereItSits { get; init; }

    /// <summary>Whether its habitat is behind it, exposed by the light of the place.</summary>
    public bool ShowsHabitat { get; init; }

    /// <summary>Name of the sheet that stands behind the subject; none where none does.</summary>
    public string? Upright { get; init; }

    /// <summary>The framing.</summary>
    public required FramingPlan Framing { get; init; }

    /// <summary>f-number to set on the lens.</summary>
    public required FNumber Aperture { get; init; }

    /// <summary>Effective f-number at this magnification.</summary>
    public required FNumber EffectiveAperture { get; init; }

    /// <summary>Shutter speed to set.</summary>
    public required ShutterSpeed Shutter { get; init; }

    /// <summary>ISO speed to set.</summary>
    public required IsoSpeed Iso { get; init; }

    /// <summary>The flashes, those below first.</summary>
    public required IReadOnlyList<LightPlan> Lights { get; init; }

    /// <summary>Filter before the lens; none where there is none.</summary>
    public string? Filter { get; init; }

    /// <summary>What is turned over the animal, or what it swims in; none where there is none.</summary>
    public string? Cover { get; init; }

    /// <summary>Name of what the camera rests on; none where it is held.</summary>
    public string? Support { get; init; }

    /// <summary>Least stops by which the visible panel lies above clipping; white-background only.</summary>
    public Stops? WhiteMargin { get; init; }

    /// <summary>Margin at the brightest visible point; white-background only.</summary>
    public Stops? BrightestMargin { get; init; }

    /// <summary>Margin above which veiling glare washes out the subject; white-background only.</summary>
    public Stops? HighestMargin { get; init; }

    /// <summary>Shadow lift by veiling glare on a mid-tone; white-background only.</summary>
    public Stops? Veil { get; init; }

    /// <summary>Ambient light on the subject against a correct exposure, negative under it.</summary>
    public required Stops AmbientLevel { get; init; }

    /// <summary>All light on the subject against correct exposure, ambient and flash; none on the panel.</summary>
    public Stops? SubjectLevel { get; init; }

    /// <summary>Ambient light on the subject, where it was metered apart; <see cref="Ambient"/> is then the background's.</summary>
    public ExposureValue? SubjectAmbient { get; init; }

    /// <summary>Daylight and flash together on the background against correct exposure; dark background only.</summary>
    public Stops? BackgroundLevel { get; init; }

    /// <summary>Light that the panel throws up on the subject's underside against the lights above; white background only, none where nothing shines from above.</summary>
    public Stops? Uplight { get; init; }

    /// <summary>Light that the sheet behind the subject throws round its edges; none without such a sheet, or where nothing shines on the subject.</summary>
    public EdgeSpillPlan? EdgeSpill { get; init; }

    /// <summary>Stems that vanish between the subject and the sheet behind it; none without such a sheet.</summary>
    public StrayStemPlan? StrayStems { get; init; }

    /// <summary>Price of the ISO speed in noise: stops above the camera's lowest.</summary>
    public Stops IsoAboveBase { get; init; }

    /// <summary>Ambient light that the plan is for: the set-up's own, or the site's.</summary>
    public required ExposureValue Ambient { get; init; }

    /// <summary>What is put up against sun and wind.</summary>
    public ValueList<ShelterPlan> Shelters { get; init; } = [];

    /// <summary>Stops that the subject loses by it, against what is metered in the open; 0 or more.</summary>
    public Stops ShelterLoss { get; init; }

    /// <summary>Share of the sun in the light in the open that the loss is worked out for [1]; none where nothing shades.</summary>
    public double? SunShare { get; init; }

    /// <summary>How sharp it is.</summary>
    public required SharpnessPlan Sharpness { get; init; }

    /// <summary>Smear of each subject of the set-up that has a feature to be seen; empty where the kit names none.</summary>
    public ValueList<SubjectSmear> FeatureSmears { get; init; } = [];

    /// <summary>Blur over the f-numbers of the lens; none where no subject fits the frame.</summary>
    public SharpnessCurve? SharpnessCurve { get; init; }

    /// <summary>Combined one-sigma uncertainty of the exposure.</summary>
    public required Stops Uncertainty { get; init; }

    /// <summary>Power changes to try first, in order, as stops against the start.</summary>
    public required IReadOnlyList<Stops> Bracket { get; init; }

    /// <summary>What to do with a test object to see that the set-up works, in order.</summary>
    public required IReadOnlyList<TestStep> TestSteps { get; init; }

    /// <summary>Whether it works, what it misses, and how likely the first frame is right.</summary>
    public required ExposureVerdict Verdict { get; init; }

    /// <summary>What it may spoil although it works.</summary>
    public ValueList<ExposureWarning> Warnings { get; init; } = [];

    /// <summary>Whether it works, if only at the edge.</summary>
    public bool IsUsable => Verdict.Verdict != Planning.Verdict.DoesNotWork;

    /// <summary>Whether another exposure is set just like this one: camera, distances and powers.</summary>
    /// <param name="other">The other exposure.</param>
    public bool IsSetLike(ExposurePlan other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return IsSetLike(Promise.Of(other));
    }

    /// <summary>Whether a promise is set just like this exposure: camera, distances and powers.</summary>
    /// <param name="promise">The promise.</param>
    public bool IsSetLike(Promise promise) => Promise.Of(this).IsSetLike(promise);

    /// <summary>Limits of the theory that the reader must know.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>Subject examples that this framing shows whole, by name.</summary>
    public IReadOnlyList<string> Subjects { get; init; } = [];

    /// <summary>Camera pitches that the plan holds for.</summary>
    public required IReadOnlyList<Angle> CameraPitches { get; init; }
}
