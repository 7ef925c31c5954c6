using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Panels;
using StudioKit.Planning.Uncertainties;
using UnitsNet;

namespace StudioKit.Planning.Exposures;

/// <summary>Set-ups × framings → starting exposures.</summary>
internal static class ExposurePlanner
{
    private const int MostChanges = 3;

    /// <summary>Every set-up at every framing that it uses and that is reached.</summary>
    public static IReadOnlyList<ExposurePlan> Plan(KitSpec kit, IReadOnlyList<PlannedFraming> framings, PanelLight panelLight, KnownInputs known) =>
        [.. kit.SetUps.SelectMany(setUp => framings
            .Where(framing => framing.Plan.Reached && Uses(setUp, framing.Lens))
            .Select(framing => Solve(new SetUpAtFraming(kit, setUp, framing, known), panelLight)))];

    private static bool Uses(SetUpSpec setUp, LensSpec lens) => setUp.Lenses.Count == 0 || setUp.Lenses.Contains(lens.Name);

    private static ExposurePlan Solve(SetUpAtFraming at, PanelLight panelLight)
    {
        switch (at.SetUp.Kind)
        {
            case SetUpKind.WhiteBackground:
                var seen = panelLight.Extremes(at);
                var white = SetUpCases.WhiteBackground(at, seen ?? new PanelExtremes(default, default));
                return Assemble(at, Seen(WhiteBackgroundSetUp.Solve(white), seen), () => WhiteBackgroundSetUp.Changes(white, MostChanges));
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

    private static SetUpResult Seen(SetUpResult result, PanelExtremes? seen) => seen is not null || !result.Works
        ? result
        : result with { BindingLimit = "What the camera would see of the panel cannot be worked out: mend the flash's place or the camera's angle first." };

    private static ExposurePlan Assemble(SetUpAtFraming at, SetUpResult result, Func<IReadOnlyList<SetUpChange>> changes)
    {
        var main = result.Lights.Count > 0 ? result.Lights[0].Budget : null;
        var shutter = ThirdStopSeries.Nearest(result.Camera.Shutter);
        var exposed = Exposed(result, shutter);
        return new ExposurePlan
        {
            SetUp = at.SetUp.Name,
            Kind = at.SetUp.Kind,
            Framing = at.Framing.Plan,
            Aperture = result.Camera.Aperture,
            EffectiveAperture = result.Camera.Effective,
            Shutter = shutter,
            Iso = result.Camera.Iso,
            Lights = LightPlans.Of(at, result),
            Filter = at.SetUp.Filter,
            WhiteMargin = result.WhiteMargin,
            BrightestMargin = result.BrightestMargin,
            HighestMargin = result.HighestMargin,
            Veil = result.Veil,
            AmbientLevel = result.AmbientLevel,
            Ambient = at.Ambient,
            IsoAboveBase = result.IsoAboveBase,
            Sharpness = SharpnessPlanner.Plan(at.Kit, at.Framing, exposed, at.MainSubject),
            SharpnessCurve = SharpnessCurves.Of(at.Framing, at.MainSubject, result.Camera.Aperture),
            Uncertainty = ExposureUncertainty.Of(at.SetUp.Kind, result, main, at.Known.Ambient(at.SetUp)),
            Bracket = main is null ? [] : [main.Bracket, -main.Bracket],
            Check = CardAdvice.Check(at.SetUp.Kind),
            Remedies = CardAdvice.Remedies(at, result),
            BindingLimit = result.BindingLimit,
            Changes = result.Works ? [] : [.. changes().Select(change => change.Change)],
            Caveats = [.. result.Caveats, .. LightPlans.Caveats(at), .. at.ApertureCaveats],
            Subjects = [.. at.SubjectsThatFit.Select(subject => subject.Name)],
            CameraPitches = at.SetUp.CameraPitches,
        };
    }

    private static ExposedWith Exposed(SetUpResult result, ShutterSpeed shutter) => new()
    {
        Aperture = result.Camera.Aperture,
        Shutter = shutter,
        FlashDuration = result.Lights.Count > 0 ? result.Lights.Select(light => light.FlashDuration).Max() : null,
        RecycleTime = result.Lights.Count > 0 ? result.Lights.Select(light => light.RecycleTime).Max() : null,
        Flashes = result.Lights.Count,
        AmbientShare = ExposureUncertainty.AmbientShare(result),
    };
}
