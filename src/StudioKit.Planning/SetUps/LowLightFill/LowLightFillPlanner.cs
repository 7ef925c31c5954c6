using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.LowLightFill;

/// <summary>Available light with flash as fill.</summary>
internal sealed class LowLightFillPlanner : SetUpPlanner
{
    public override bool WhereItSits => true;

    public override string Check => "Flash off, fire: the scene must be as bright as it should look. Flash on: the subject lifts, the scene stays.";

    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Fill, LightRole.Key, LightRole.Above];

    public override SetUpSolution Solve(SetUpAtFraming at)
    {
        var dusk = new LowLightFillCase
        {
            Camera = at.Camera,
            Limits = at.LimitsInAmbientLight,
            Ambient = at.Ambient,
            Lights = OnSubject(at),
            FillLevel = at.SetUp.FillLevel,
            FavouriteIso = at.SetUp.Iso,
        };
        return new SetUpSolution(LowLightFillSetUp.Solve(dusk), () => LowLightFillSetUp.Changes(dusk, SetUpSolution.MostChanges));
    }

    public override IReadOnlyList<Remedy> Remedies(SetUpAtFraming at, SetUpResult result) =>
    [
        new("Smeared", "wait for the lull, or one stop shorter and ISO up one stop"),
        new("Looks flash-lit", "fill down a click or two"),
        new("Wet skin glares", "turn the polariser; it costs 1 to 2 stops"),
    ];

    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => AmbientWeight.Uncertainty(result, main, ambient);
}
