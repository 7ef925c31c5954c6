using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Panels;
using UnitsNet;

namespace StudioKit.Planning.Exposures;

/// <summary>Set-ups × framings → starting exposures.</summary>
internal static class ExposurePlanner
{
    private const int MostChanges = 3;

    // Ambient light that was looked up in a table and not metered (common practice, no source).
    private static readonly Stops UnmeteredAmbient = new(1);

    /// <summary>Every set-up at every framing that it uses and that is reached.</summary>
    public static IReadOnlyList<ExposurePlan> Plan(KitSpec kit, IReadOnlyList<PlannedFraming> framings, PanelLight panelLight) =>
        [.. kit.SetUps.SelectMany(setUp => framings
            .Where(framing => framing.Plan.Reached && Uses(setUp, framing.Lens))
            .Select(framing => Solve(new SetUpAtFraming(kit, setUp, framing), panelLight)))];

    private static bool Uses(SetUpSpec setUp, LensSpec lens) => setUp.Lenses.Count == 0 || setUp.Lenses.Contains(lens.Name);

    private static ExposurePlan Solve(SetUpAtFraming at, PanelLight panelLight)
    {
        switch (at.SetUp.Kind)
        {
            case SetUpKind.WhiteBackground:
                var white = SetUpCases.WhiteBackground(at, panelLight.Extremes(at) ?? new PanelExtremes(default, default));
                return Assemble(at, WhiteBackgroundSetUp.Solve(white), () => WhiteBackgroundSetUp.Changes(white, MostChanges));
            case SetUpKind.DaylightFill:
                var daylight = SetUpCases.DaylightFill(at);
                return Assemble(at, DaylightFillSetUp.Solve(daylight), () => DaylightFillSetUp.Changes(daylight, MostChanges));
            case SetUpKind.LowLightFill:
                var dusk = SetUpCases.LowLightFill(at);
                return Assemble(at, LowLightFillSetUp.Solve(dusk), () => LowLightFillSetUp.Changes(dusk, MostChanges));
            default:
                var dark = SetUpCases.DarkBackground(at);
                return Assemble(at, DarkBackgroundSetUp.Solve(dark), () => DarkBackgroundSetUp.Changes(dark, MostChanges));
        }
    }

    private static ExposurePlan Assemble(SetUpAtFraming at, SetUpResult result, Func<IReadOnlyList<SetUpChange>> changes)
    {
        var main = result.Lights.Count > 0 ? result.Lights[0].Budget : null;
        var shutter = ThirdStopSeries.Nearest(result.Camera.Shutter);
        var flashDuration = result.Lights.Count > 0 ? result.Lights.Select(light => light.FlashDuration).Max() : (Duration?)null;
        return new ExposurePlan
        {
            SetUp = at.SetUp.Name,
            Kind = at.SetUp.Kind,
            Framing = at.Framing.Plan,
            Aperture = result.Camera.Aperture,
            EffectiveAperture = result.Camera.Effective,
            Shutter = shutter,
            Iso = result.Camera.Iso,
            Lights = [.. result.Lights.Select(light => LightOf(at, light))],
            Filter = at.SetUp.Filter,
            WhiteMargin = result.WhiteMargin,
            BrightestMargin = result.BrightestMargin,
            HighestMargin = result.HighestMargin,
            Veil = result.Veil,
            AmbientLevel = result.AmbientLevel,
            Ambient = at.Kit.Site.Ambient,
            Sharpness = SharpnessPlanner.Plan(
                at.Kit, at.Framing, result.Camera.Aperture, shutter, flashDuration, CombinedLight.ShareOf(result.AmbientLevel), at.MainSubject),
            Uncertainty = main?.Uncertainty ?? UnmeteredAmbient,
            Bracket = main is null ? [] : [main.Bracket, -main.Bracket],
            Check = CardAdvice.Check(at.SetUp.Kind),
            Remedies = CardAdvice.Remedies(at, result),
            BindingLimit = result.BindingLimit,
            Changes = result.Works ? [] : [.. changes().Select(change => change.Change)],
            Caveats = [.. result.Caveats, .. at.SetUp.Lights.SelectMany(light => LightingCases.Caveats(at.Kit, light)), .. at.ApertureCaveats],
            Subjects = [.. at.SubjectsThatFit.Select(subject => subject.Name)],
            CameraPitches = at.SetUp.CameraPitches,
        };
    }

    private static LightPlan LightOf(SetUpAtFraming at, LightSolution solution)
    {
        var light = at.SetUp.Lights.First(candidate => candidate.Flash == solution.Flash.Name);
        var flash = LightingCases.FlashOf(at.Kit, light);
        var reached = solution.Power.IsReached;
        return new LightPlan
        {
            Flash = solution.Flash.Name,
            Role = light.Role,
            Modifier = light.Modifier,
            Distance = solution.Flash.Distance,
            Power = reached ? solution.Power.Power : null,
            PowerMark = reached ? solution.Power.Power.Nominal : solution.Power.BindingLimit!,
            Budget = solution.Budget,
            FlashDuration = reached ? solution.FlashDuration : null,
            RecycleTime = reached ? solution.RecycleTime : null,
            FlashesCarried = reached
                ? FlashEnergy.FlashesPerSet(flash.FlashesPerSet, solution.Power.Power) * (1 + flash.SpareSets)
                : null,
            DistancePowers = DistanceTable.Of(solution),
        };
    }
}
