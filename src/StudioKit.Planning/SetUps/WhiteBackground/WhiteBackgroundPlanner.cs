using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>A sheet burnt out by the flash below or behind it, the subject lit from above, daylight kept out.</summary>
/// <param name="sheets">What the flashes of the sheets in the picture do: below the panel, behind an upright sheet, or both; at least one.</param>
internal sealed class WhiteBackgroundPlanner(params LightRole[] sheets) : SetUpPlanner
{
    // Every lens has some veil: none at all cannot be asked for, and nobody sees less than this.
    private const double LeastVeil = 0.01;

    public override bool LightsPanel => sheets.Contains(LightRole.Below);

    public override bool LightsSheet => true;

    public override bool WhereItSits => !LightsPanel;

    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Above, LightRole.Key, LightRole.Fill];

    public override IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp) => [.. sheets.Select(role => setUp.LightsOf(role).First()), .. base.InOrder(setUp)];

    public override IEnumerable<LightSpec> Alongside(SetUpSpec setUp) => sheets.SelectMany(role => setUp.LightsOf(role).Skip(1));

    public override IEnumerable<TestStep> TestSteps(SetUpSpec setUp) => [.. LightsPanel ? (TestStep[])[] : [TestStep.LookThrough], TestStep.AmbientAlone, .. SheetSteps, TestStep.AllTogether];

    private IEnumerable<TestStep> SheetSteps => (LightsPanel, sheets.Length) switch
    {
        (true, 1) => [TestStep.BackgroundAlone],
        (false, _) => [TestStep.BehindAlone],
        _ => [TestStep.PanelAlone, TestStep.UprightAlone],
    };

    public override SetUpResult Solve(SetUpAtFraming at)
    {
        var seen = sheets.Select(role => PanelExtremes.Of(at, role)).ToList();
        var result = WhiteBackgroundSetUp.Solve(CaseOf(at, [.. seen.Select(extremes => extremes ?? new PanelExtremes(default, default))]));
        return seen.TrueForAll(extremes => extremes is null) ? result with { Missed = [new MissedLimit.Unseen()] } : result;
    }

    public override IEnumerable<SymptomRule> Symptoms(SetUpSpec setUp, ExposurePlan now) => WhiteSymptoms.Of(setUp, now);

    /// <summary>White everywhere and washed out nowhere.</summary>
    public override ExposureVerdict Chances(SetUpAtFraming at, SetUpResult result, Stops uncertainty) => ExposureVerdict.Kept with
    {
        FirstFrame = Likelihood.Between(result.WhiteMargin!.Value, result.BrightestMargin!.Value, default, result.HighestMargin!.Value, uncertainty),
        GreyCorner = 1 - Likelihood.Above(result.WhiteMargin!.Value, default, uncertainty),
    };

    /// <summary>A white background stands and falls with the flash of its sheet.</summary>
    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => main.Uncertainty;

    // Darkest and brightest visible point come from the light map.
    private WhiteBackgroundCase CaseOf(SetUpAtFraming at, IReadOnlyList<PanelExtremes> extremes) => new()
    {
        Camera = at.Camera,
        Limits = at.Limits,
        Ambient = new ExposureValue(at.Ambient.AtIso100 - (at.Cover?.Daylight.Value ?? 0) - at.Sheltered.Value),
        Below = FlashOf(at, sheets[0]),
        Lights = OnSubject(at),
        Transmittance = PanelExtremes.TransmittanceOf(at, sheets[0]),
        DarkestPoint = extremes[0].Darkest,
        BrightestPoint = extremes[0].Brightest + (at.Cover?.Spread ?? default),
        Behind = sheets.Length < 2
            ? null
            : new BackgroundSheet
            {
                Flash = FlashOf(at, sheets[1]),
                Transmittance = PanelExtremes.TransmittanceOf(at, sheets[1]),
                DarkestPoint = extremes[1].Darkest,
                BrightestPoint = extremes[1].Brightest + (at.Cover?.Spread ?? default),
            },
        TargetWhiteMargin = at.SetUp.TargetWhiteMargin,
        VeilLimit = new Stops(Math.Max(LeastVeil, at.SetUp.VeilLimit.Value)),
        GlareIndex = Math.Min(1, at.Kit.Camera.VeilingGlare + (at.Cover?.SheetMirrored ?? 0)),
        AmbientBelowFlash = at.SetUp.AmbientBelowFlash,
    };

    private static FlashCase FlashOf(SetUpAtFraming at, LightRole role)
    {
        var flashes = at.SetUp.LightsOf(role).Select(at.Flash).ToList();
        return FlashesInStep.Narrowed(flashes[0], flashes[1..], at.Limits);
    }
}
