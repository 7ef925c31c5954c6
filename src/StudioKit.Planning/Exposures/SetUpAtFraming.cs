using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Uncertainties;

namespace StudioKit.Planning.Exposures;

/// <summary>One set-up at one framing: what an exposure is solved for.</summary>
internal sealed record SetUpAtFraming(KitSpec Kit, SetUpSpec SetUp, PlannedFraming Framing, KnownInputs Known)
{
    private static readonly FNumber UsualAperture = new(16);

    private FNumber? _aperture;
    private FNumber? _wanted;

    /// <summary>Subjects of the set-up that fit into the field whole, longest first.</summary>
    public IReadOnlyList<SubjectSpec> SubjectsThatFit { get; } =
        [.. Kit.Subjects
            .Where(subject => SetUp.Subjects.Count == 0 || SetUp.Subjects.Contains(subject.Name))
            .Where(subject => subject.Length <= Framing.Plan.FieldWidth)
            .OrderByDescending(subject => subject.Length)];

    /// <summary>The subject that fills the field best; none where none fits.</summary>
    public SubjectSpec? MainSubject => SubjectsThatFit.Count > 0 ? SubjectsThatFit[0] : null;

    /// <summary>Ambient light that the set-up is planned for.</summary>
    public ExposureValue Ambient => SetUp.Ambient ?? Kit.Site.Ambient;

    /// <summary>The f-number to use: the set-up's own, or the sharpest for the subject, within what the lens has.</summary>
    public FNumber Aperture => _aperture ??= WithinLens(Wanted);

    /// <summary>Says where the lens does not have the f-number that the set-up wants.</summary>
    public IReadOnlyList<string> ApertureCaveats => Aperture == Wanted
        ? []
        : [$"{Framing.Lens.Name} has no {Wanted.Nominal}; {Aperture.Nominal} is used."];

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
