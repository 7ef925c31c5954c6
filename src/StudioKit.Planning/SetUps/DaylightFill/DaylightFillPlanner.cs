using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.DaylightFill;

/// <summary>Habitat behind, flashes just under the daylight.</summary>
internal sealed class DaylightFillPlanner : HabitatPlanner
{
    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Key, LightRole.Above, LightRole.Fill];

    public override IEnumerable<TestStep> TestSteps(SetUpSpec setUp) => setUp.Lights.Count > 0 ? [TestStep.HabitatAlone, TestStep.FillOn] : [TestStep.HabitatAlone];

    public override SetUpResult Solve(SetUpAtFraming at) => DaylightFillSetUp.Solve(new DaylightFillCase
    {
        Camera = at.Camera,
        Limits = at.LimitsInAmbientLight,
        Ambient = at.Ambient,
        Lights = OnSubject(at),
        FillLevel = at.FillLevel,
        FavouriteIso = at.SetUp.Iso,
        SubjectShade = (at.SubjectShade ?? DaylightFillCase.OwnShade) - at.Sheltered,
    });
}
