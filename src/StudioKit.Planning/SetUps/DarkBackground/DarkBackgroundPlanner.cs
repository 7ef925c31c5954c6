using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.SetUps.DarkBackground;

/// <summary>Background left black, key and rim light.</summary>
internal sealed class DarkBackgroundPlanner : SetUpPlanner
{
    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Key, LightRole.Above, LightRole.Fill];

    public override IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp) => [.. base.InOrder(setUp), .. setUp.LightsOf(LightRole.Rim)];

    public override IEnumerable<TestStep> TestSteps(SetUpSpec setUp) => setUp.LightsOf(LightRole.Rim).Any()
        ? [TestStep.AmbientAlone, TestStep.KeyAlone, TestStep.RimAlone, TestStep.AllTogether]
        : [TestStep.AmbientAlone, TestStep.AllTogether];

    public override SetUpResult Solve(SetUpAtFraming at) => DarkBackgroundSetUp.Solve(new DarkBackgroundCase
    {
        Camera = at.Camera,
        Limits = at.Limits,
        Ambient = at.Ambient,
        SubjectShade = (at.SubjectShade ?? default) - (at.Cover?.Daylight ?? default) - at.Sheltered,
        Lights = OnSubject(at),
        Rims = [.. at.SetUp.LightsOf(LightRole.Rim).Select(light => new SubjectLight(at.Flash(light), at.SetUp.RimLevel))],
        BackgroundUnder = at.SetUp.AmbientUnder,
        BackgroundDistance = at.SetUp.BackgroundDistance,
    });

    public override IEnumerable<SymptomRule> Symptoms(SetUpSpec setUp, ExposurePlan now) => DarkSymptoms.Of(setUp, now);

    /// <summary>The subject right, and neither daylight nor flash on the background.</summary>
    public override ExposureVerdict Chances(SetUpAtFraming at, SetUpResult result, Stops uncertainty)
    {
        var hidden = DarkChance.BackgroundHidden(result, at.SetUp.AmbientUnder, at.Known.Ambient, uncertainty);
        return ExposureVerdict.Kept with { FirstFrame = hidden * NearEnough(result.SubjectLevel, uncertainty), BackgroundShows = 1 - hidden };
    }

    /// <summary>A dark background stands and falls with the key.</summary>
    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => main.Uncertainty;
}
