using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.DarkBackground;

/// <summary>Background left black, key and rim light.</summary>
internal sealed class DarkBackgroundPlanner : SetUpPlanner
{
    public override string Check => "Flash off, fire: the frame must be black. Key alone, then rim alone, then both.";

    protected override IReadOnlyList<LightRole> RolesOnSubject { get; } = [LightRole.Key, LightRole.Above, LightRole.Fill];

    public override IReadOnlyList<LightSpec> InOrder(SetUpSpec setUp) => [.. base.InOrder(setUp), .. setUp.LightsOf(LightRole.Rim)];

    public override SetUpSolution Solve(SetUpAtFraming at)
    {
        var dark = new DarkBackgroundCase
        {
            Camera = at.Camera,
            Limits = at.Limits,
            Ambient = at.Ambient,
            Lights = OnSubject(at),
            Rims = [.. at.SetUp.LightsOf(LightRole.Rim).Select(light => new SubjectLight(at.Flash(light), at.SetUp.RimLevel))],
            BackgroundUnder = at.SetUp.AmbientUnder,
            BackgroundDistance = at.SetUp.BackgroundDistance,
        };
        return new SetUpSolution(DarkBackgroundSetUp.Solve(dark), () => DarkBackgroundSetUp.Changes(dark, SetUpSolution.MostChanges));
    }

    public override IReadOnlyList<Remedy> Remedies(SetUpAtFraming at, SetUpResult result) =>
    [
        new("Background shows with flash off", "lower ISO or smaller aperture, flashes up as much"),
        new("Background shows with flash on", "move it farther off, or the key closer and down"),
        new("Outline lost", "rim up a click or two, or farther round behind"),
    ];

    /// <summary>A dark background stands and falls with the key.</summary>
    public override Stops Uncertainty(SetUpResult result, LightBudget main, Stops ambient) => main.Uncertainty;
}
