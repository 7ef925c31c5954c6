using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>The panel burnt out from below, the subject lit from above, daylight kept out.</summary>
internal sealed class WhiteBackgroundPlanner : SetUpPlanner
{
    // Every lens has some veil: none at all cannot be asked for, and nobody sees less than this.
    private const double LeastVeil = 0.01;

    public override bool LightsPanel => true;

    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Above, LightRole.Key, LightRole.Fill];

    public override IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp) => [setUp.LightsOf(LightRole.Below).First(), .. base.InOrder(setUp)];

    public override IEnumerable<LightSpec> Alongside(SetUpSpec setUp) => setUp.LightsOf(LightRole.Below).Skip(1);

    public override IEnumerable<TestStep> TestSteps(SetUpSpec setUp) => [TestStep.AmbientAlone, TestStep.BackgroundAlone, TestStep.AllTogether];

    public override SetUpResult Solve(SetUpAtFraming at)
    {
        var seen = PanelExtremes.Of(at);
        var result = WhiteBackgroundSetUp.Solve(CaseOf(at, seen ?? new PanelExtremes(default, default)));
        return seen is null ? result with { Missed = [new MissedLimit.Unseen()] } : result;
    }

    public override IEnumerable<SymptomRule> Symptoms(SetUpSpec setUp, ExposurePlan now) => WhiteSymptoms.Of(setUp, now);

    /// <summary>White everywhere and washed out nowhere.</summary>
    public override ExposureVerdict Chances(SetUpAtFraming at, SetUpResult result, Stops uncertainty) => ExposureVerdict.Kept with
    {
        FirstFrame = Likelihood.Between(result.WhiteMargin!.Value, result.BrightestMargin!.Value, default, result.HighestMargin!.Value, uncertainty),
        GreyCorner = 1 - Likelihood.Above(result.WhiteMargin!.Value, default, uncertainty),
    };

    /// <summary>A white background stands and falls with the flash below.</summary>
    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => main.Uncertainty;

    // Darkest and brightest visible point come from the light map.
    private WhiteBackgroundCase CaseOf(SetUpAtFraming at, PanelExtremes extremes) => new()
    {
        Camera = at.Camera,
        Limits = at.Limits,
        Ambient = new ExposureValue(at.Ambient.AtIso100 - (at.Cover?.Daylight.Value ?? 0)),
        Below = FlashesInStep.Narrowed(at.Flash(at.SetUp.LightsOf(LightRole.Below).First()), [.. Alongside(at.SetUp).Select(at.Flash)], at.Limits),
        Lights = OnSubject(at),
        Transmittance = at.Kit.Panel.Transmittance,
        DarkestPoint = extremes.Darkest,
        BrightestPoint = extremes.Brightest + (at.Cover?.Spread ?? default),
        TargetWhiteMargin = at.SetUp.TargetWhiteMargin,
        VeilLimit = new Stops(Math.Max(LeastVeil, at.SetUp.VeilLimit.Value)),
        GlareIndex = Math.Min(1, at.Kit.Camera.VeilingGlare + (at.Cover?.SheetMirrored ?? 0)),
        AmbientBelowFlash = at.SetUp.AmbientBelowFlash,
    };
}
