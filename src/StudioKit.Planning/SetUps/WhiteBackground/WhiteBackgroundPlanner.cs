using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>The panel burnt out from below, the subject lit from above, daylight kept out.</summary>
internal sealed class WhiteBackgroundPlanner : SetUpPlanner
{
    private const string Unseen = "What the camera would see of the panel cannot be worked out: mend the flash's place or the camera's angle first.";

    // Every lens has some veil: none at all cannot be asked for, and nobody sees less than this.
    private const double LeastVeil = 0.01;

    public override bool LightsPanel => true;

    public override string Check => "Test object on the panel, flash above off, fire: the whole background must blink as overexposed.";

    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Above, LightRole.Key, LightRole.Fill];

    public override IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp) => [setUp.LightsOf(LightRole.Below).First(), .. base.InOrder(setUp)];

    public override IEnumerable<LightSpec> Alongside(SetUpSpec setUp) => setUp.LightsOf(LightRole.Below).Skip(1);

    public override SetUpSolution Solve(SetUpAtFraming at)
    {
        var seen = PanelExtremes.Of(at);
        var white = CaseOf(at, seen ?? new PanelExtremes(default, default));
        var result = WhiteBackgroundSetUp.Solve(white);
        return new SetUpSolution(
            seen is null && result.Works ? result with { BindingLimit = Unseen } : result,
            () => WhiteBackgroundSetUp.Changes(white, SetUpSolution.MostChanges));
    }

    public override IReadOnlyList<Remedy> Remedies(SetUpAtFraming at, SetUpResult result) => WhiteBackgroundAdvice.Of(at, result);

    /// <summary>A white background stands and falls with the flash below.</summary>
    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => main.Uncertainty;

    // Darkest and brightest visible point come from the light map.
    private WhiteBackgroundCase CaseOf(SetUpAtFraming at, PanelExtremes extremes) => new()
    {
        Camera = at.Camera,
        Limits = at.Limits,
        Ambient = at.Ambient,
        Below = FlashesInStep.Narrowed(at.Flash(at.SetUp.LightsOf(LightRole.Below).First()), [.. Alongside(at.SetUp).Select(at.Flash)], at.Limits),
        Lights = OnSubject(at),
        Transmittance = at.Kit.Panel.Transmittance,
        DarkestPoint = extremes.Darkest,
        BrightestPoint = extremes.Brightest,
        TargetWhiteMargin = at.SetUp.TargetWhiteMargin,
        VeilLimit = new Stops(Math.Max(LeastVeil, at.SetUp.VeilLimit.Value)),
        GlareIndex = at.Kit.Camera.VeilingGlare,
        AmbientBelowFlash = at.SetUp.AmbientBelowFlash,
    };
}
