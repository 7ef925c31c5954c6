using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Sheltering;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.SetUps;

/// <summary>Set-ups × framings → starting exposures.</summary>
internal static class ExposurePlanner
{
    /// <summary>A set-up at every framing that it uses and that is reached.</summary>
    public static IReadOnlyList<ExposurePlan> Plan(
        KitSpec kit, SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings, StudioLight? light, KnownSetUp known) =>
        [.. framings.Where(framing => framing.IsUsedIn(setUp)).Select(framing => Plan(new SetUpAtFraming(kit, setUp, framing, known, light)))];

    /// <summary>A set-up at one framing.</summary>
    public static ExposurePlan Plan(SetUpAtFraming at)
    {
        var result = at.Planner.Solve(at);
        var main = result.Lights.Count > 0 ? result.Lights[0].Budget : null;
        var shutter = ThirdStopSeries.Nearest(result.Camera.Shutter);
        var exposed = Exposed(at, result, shutter);
        var sharpness = SharpnessPlanner.Plan(at.Kit, at.Framing, exposed, at.MainSubject);
        var uncertainty = UncertaintyOf(at, result, main);
        var lights = LightPlans.Of(at, result);
        var uplight = at.Light?.UplightAgainstKey(at.SetUp, lights, at.MainSubject);
        var spill = at.Light?.EdgeSpill(at.SetUp, at.Framing, lights, EdgeSpillPlanner.Correct(result.Camera));
        return new ExposurePlan
        {
            SetUp = at.SetUp.Name,
            Kind = at.SetUp.Kind,
            Framing = at.Framing.Plan,
            Aperture = result.Camera.Aperture,
            EffectiveAperture = result.Camera.Effective,
            Shutter = shutter,
            Iso = result.Camera.Iso,
            Lights = lights,
            Filter = at.SetUp.Filter,
            Cover = at.SetUp.Cover,
            Support = at.SetUp.Support,
            WhiteMargin = result.WhiteMargin,
            BrightestMargin = result.BrightestMargin,
            HighestMargin = result.HighestMargin,
            Veil = result.Veil,
            AmbientLevel = result.AmbientLevel,
            BackgroundLevel = result.BackgroundLevel,
            SubjectLevel = at.Planner.LightsSheet ? null : result.SubjectLevel,
            SubjectAmbient = at.SetUp.SubjectAmbient,
            Uplight = uplight,
            EdgeSpill = spill,
            StrayStems = StrayStemPlanner.Of(at.Kit, at.SetUp, at.Framing, result.Camera.Effective, result.WhiteMargin),
            Ambient = at.Ambient,
            Shelters = Shade.Plans(at.Kit, at.SetUp),
            ShelterLoss = at.Sheltered,
            SunShare = at.Sheltered.Value > 0 ? Shade.Share(at.Kit, at.SetUp) : null,
            IsoAboveBase = result.IsoAboveBase,
            Sharpness = sharpness,
            FeatureSmears = [.. at.SubjectsWithFeatures.Select(subject => new SubjectSmear(subject.Name, sharpness.AtSubject(SharpnessPlanner.SmearOf(at.Kit, at.Framing, exposed, subject).Pixels)))],
            SharpnessCurve = SharpnessCurves.Of(at.Framing, at.MainSubject, result.Camera.Aperture),
            Uncertainty = uncertainty,
            Bracket = result.Lights.Count == 0 ? [] : BracketOf(result.Lights[0]),
            TestSteps = [.. at.SetUp.Lights.Any(light => light.Trigger is not null) ? (TestStep[])[TestStep.EachFires] : [], .. at.Planner.TestSteps(at.SetUp), .. PolariserOf(at)],
            Verdict = ExposureJudge.Of(at, result, uncertainty, (sharpness.SmearPixels, sharpness.SmearLimit)),
            Warnings = [.. ExposureWarnings.Of(uplight, spill)],
            Caveats = [.. result.Caveats, .. LightPlans.Caveats(at), .. Firings.Caveats(at.Kit, at.SetUp), .. Shade.Caveats(at.Kit, at.SetUp), .. at.ApertureCaveats],
            Subjects = [.. at.SubjectsThatFit.Select(subject => subject.Name)],
            CameraPitches = at.SetUp.CameraPitches,
            OnPanel = at.Planner.LightsPanel,
            WhereItSits = at.Planner.WhereItSits,
            ShowsHabitat = at.Planner.ShowsHabitat,
            Upright = at.SetUp.Upright,
        };
    }

    /// <summary>The verdict on a set-up at one framing, without the rest of its exposure.</summary>
    public static ExposureVerdict VerdictOf(SetUpAtFraming at)
    {
        var result = at.Planner.Solve(at);
        var uncertainty = UncertaintyOf(at, result, result.Lights.Count > 0 ? result.Lights[0].Budget : null);
        return ExposureJudge.Of(at, result, uncertainty, SharpnessPlanner.SmearOf(at.Kit, at.Framing, Exposed(at, result, ThirdStopSeries.Nearest(result.Camera.Shutter)), at.MainSubject));
    }

    private static IReadOnlyList<Stops> BracketOf(LightSolution main)
    {
        var bracket = main.Budget.Bracket(main.Flash.PowerStep);
        return [bracket, -bracket];
    }

    private static IEnumerable<TestStep> PolariserOf(SetUpAtFraming at) =>
        LightingCases.FilterOf(at.Kit, at.SetUp) is { Kind: FilterKind.Polariser } ? [TestStep.TurnPolariser] : [];

    // Without a flash only the ambient light is left to be wrong about.
    private static Stops UncertaintyOf(SetUpAtFraming at, SetUpResult result, LightBudget? main)
    {
        var ambient = at.Known.Ambient;
        return main is null ? ambient : at.Planner.Uncertainty(result, main, ambient);
    }

    private static ExposedWith Exposed(SetUpAtFraming at, SetUpResult result, ShutterSpeed shutter) => new()
    {
        Sway = at.Kit.SwayOf(at.SetUp),
        Aperture = result.Camera.Aperture,
        Shutter = shutter,
        FlashDuration = result.Lights.Count > 0 ? result.Lights.Select(light => light.FlashDuration).Max() : null,
        RecycleTime = result.Lights.Count > 0 ? result.Lights.Select(light => light.RecycleTime).Max() : null,
        Flashes = result.Lights.Count,
        AmbientShare = AmbientWeight.Of(result),
    };
}
