using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Sheltering;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.SetUps;

/// <summary>One set-up at one framing: what an exposure is solved for.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="SetUp">The set-up.</param>
/// <param name="Framing">The framing.</param>
/// <param name="Known">How well the inputs are known.</param>
/// <param name="Light">The studio's light; none where the set-up does not stand on the panel.</param>
internal sealed record SetUpAtFraming(KitSpec Kit, SetUpSpec SetUp, PlannedFraming Framing, KnownSetUp Known, StudioLight? Light)
{
    private static readonly FNumber UsualAperture = new(16);

    private readonly Lazy<CoverOptics?> _cover = new(() => CoverOptics.Of(Kit, SetUp, Framing, Light?.Around));
    private readonly Lazy<Stops[]> _hidden = new(() => [.. SetUp.Lights.Select(light => LensShade.Loss(Kit, SetUp, Framing, light))]);
    private FNumber? _aperture;
    private FNumber? _wanted;

    /// <summary>Subjects of the set-up that fit into the field whole, longest first.</summary>
    public IReadOnlyList<SubjectSpec> SubjectsThatFit { get; } = [.. Framing.Whole(Kit.SubjectsOf(SetUp)).OrderByDescending(subject => subject.Length)];

    /// <summary>Subjects of the set-up that have a feature to be seen, whether they fit whole or not.</summary>
    public IEnumerable<SubjectSpec> SubjectsWithFeatures => Kit.SubjectsOf(SetUp).Where(subject => subject.Feature is not null);

    /// <summary>The subject that fills the field best; none where none fits.</summary>
    public SubjectSpec? MainSubject => SubjectsThatFit.Count > 0 ? SubjectsThatFit[0] : null;

    /// <summary>Its way of lighting.</summary>
    public SetUpPlanner Planner { get; } = SetUpPlanners.Of(SetUp);

    /// <summary>Ambient light that the set-up is planned for.</summary>
    public ExposureValue Ambient => SetUp.Ambient ?? Kit.Site.Ambient;

    /// <summary>Ambient light on the subject against the background's; none where it was not metered apart.</summary>
    public Stops? SubjectShade => FillLevels.ShadeOf(SetUp);

    /// <summary>Stops that the subject loses by what is put up against the sun; 0 or more.</summary>
    public Stops Sheltered { get; } = Shade.Loss(Kit, SetUp);

    /// <summary>Level of the fill against correct exposure: the set-up's own, else what the subject's own light lacks, else the usual.</summary>
    public Stops FillLevel => FillLevels.Of(SetUp, Sheltered);

    /// <summary>The f-number to use: the set-up's own, or the sharpest for the subject, within what the lens has.</summary>
    public FNumber Aperture => _aperture ??= WithinLens(Wanted);

    /// <summary>Says where the lens does not have the f-number that the set-up wants.</summary>
    public IReadOnlyList<string> ApertureCaveats => Aperture == Wanted
        ? []
        : [$"{Framing.Lens.Name} has no {Wanted.Nominal}; {Aperture.Nominal} is used."];

    /// <summary>What the cover over the subject takes of the light; none where nothing is looked through.</summary>
    public CoverOptics? Cover => _cover.Value;

    /// <summary>The camera set for it.</summary>
    public CameraCase Camera => LightingCases.Camera(Kit, SetUp, Framing, Aperture);

    /// <summary>Limits where flash is the light.</summary>
    public SetUpLimits Limits => ShotLimits.Of(this);

    /// <summary>Limits where the exposure follows the ambient light.</summary>
    public SetUpLimits LimitsInAmbientLight => ShotLimits.InAmbientLight(this);

    /// <summary>One flash of the set-up, with how well its numbers and the lens's are known.</summary>
    public FlashCase Flash(LightSpec light) => LightingCases.Flash(Kit, light) with
    {
        LensLoss = HiddenOf(light),
        DirectionLoss = LightingCases.DirectionLoss(SetUp, light),
        Uncertainty = Known.Of(SetUp, light) with
        {
            CloseFocus = Framing.Plan.ExposureUncertainty,
            IntoCover = light.Role.IsBackground() ? default : Cover?.DoubtToSubject(light) ?? default,
            OutOfCover = Cover?.DoubtToLens ?? default,
        },
        CoverLoss = light.Role.IsBackground() ? default : Cover?.ToSubject(light) ?? default,
        SubjectLoss = light.Role.IsBackground() ? default : Cover?.Subject ?? default,
    };

    // A light that is tried out where no light of the set-up stands is worked out for itself.
    private Stops HiddenOf(LightSpec light)
    {
        for (var place = 0; place < SetUp.Lights.Count; place++)
        {
            if (ReferenceEquals(SetUp.Lights[place], light))
            {
                return _hidden.Value[place];
            }
        }

        return LensShade.Loss(Kit, SetUp, Framing, light);
    }

    private FNumber Wanted => _wanted ??=
        SetUp.Aperture is { } given ? ThirdStopSeries.FromMark(given)
        : MainSubject is { } subject ? SharpnessPlanner.Sharpest(Framing, subject)
        : UsualAperture;

    private FNumber WithinLens(FNumber wanted)
    {
        var widest = ThirdStopSeries.FromMark(Framing.Lens.WidestAperture);
        var smallest = ThirdStopSeries.FromMark(Framing.Lens.SmallestAperture);
        return wanted.Value < widest.Value ? widest : wanted.Value > smallest.Value ? smallest : wanted;
    }
}
