using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.LowLightFill;

/// <summary>Available light with flash as fill.</summary>
internal sealed class LowLightFillPlanner : HabitatPlanner
{
    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Fill, LightRole.Key, LightRole.Above];

    public override IEnumerable<TestStep> TestSteps(SetUpSpec setUp) => setUp.Lights.Count > 0 ? [TestStep.SceneAlone, TestStep.FillOn] : [TestStep.SceneAlone];

    public override SetUpResult Solve(SetUpAtFraming at) => LowLightFillSetUp.Solve(new LowLightFillCase
    {
        Camera = at.Camera,
        Limits = at.LimitsInAmbientLight,
        Ambient = at.Ambient,
        Lights = OnSubject(at),
        FillLevel = at.FillLevel,
        SubjectShade = (at.SubjectShade ?? default) - at.Sheltered,
        FavouriteIso = at.SetUp.Iso,
    });
}
