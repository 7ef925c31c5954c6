using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.DaylightFill;

/// <summary>Habitat behind, flashes just under the daylight.</summary>
internal sealed class DaylightFillPlanner : SetUpPlanner
{
    public override bool WhereItSits => true;

    public override string Check => "Flash off, fire: the habitat must be right and the subject a little dark. Flash on: no shadow of its own.";

    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Key, LightRole.Above, LightRole.Fill];

    public override SetUpSolution Solve(SetUpAtFraming at)
    {
        var daylight = new DaylightFillCase
        {
            Camera = at.Camera,
            Limits = at.LimitsInAmbientLight,
            Ambient = at.Ambient,
            Lights = OnSubject(at),
            FillLevel = at.SetUp.FillLevel,
            FavouriteIso = at.SetUp.Iso,
        };
        return new SetUpSolution(DaylightFillSetUp.Solve(daylight), () => DaylightFillSetUp.Changes(daylight, SetUpSolution.MostChanges));
    }

    public override IReadOnlyList<Remedy> Remedies(SetUpAtFraming at, SetUpResult result) =>
    [
        new("Habitat too bright", "smaller aperture or lower ISO"),
        new("Flash shows, hard shadows", "fill down a click or two"),
        new("Subject dark against the sky", "fill up a click or two"),
    ];

    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => AmbientWeight.Uncertainty(result, main, ambient);
}
