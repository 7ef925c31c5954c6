using System.Globalization;
using StudioKit.Kits;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Tests.ByHand;
using StudioKit.Planning.Tests.Plans;
using Xunit.Abstractions;

namespace StudioKit.Planning.Tests.Advising;

/// <summary>Whoever follows a piece of advice, and plans the kit again with it, gets what was promised.</summary>
/// <remarks>The promise is worked out from the stages that a change touches; the plan that holds it to its word is a whole one of the changed kit.</remarks>
public sealed class AdviceIsKeptTests(ITestOutputHelper output)
{
    private const double Same = 1e-6;

    // All two hundred and more of a night: STUDIOKIT_RANDOM_KITS=200.
    private static readonly int Kits = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_KITS"), CultureInfo.InvariantCulture, out var kits) ? kits : 30;

    // The demo kits have hundreds of pieces, each a plan of its own: all against symptoms, every fourth of the others, from another one on each day, and all of them in a night.
    private static readonly int OneOf = Kits >= 100 ? 1 : 4;
    private static readonly int Today = TimeProvider.System.GetUtcNow().DayOfYear;

    [Theory]
    [InlineData("fen-edge.yaml")]
    [InlineData("heath-ultralight.yaml")]
    [InlineData("pond-edge.yaml")]
    [InlineData("tall-stand.yaml")]
    public void All_advice_for_a_demo_kit_is_kept(string demo)
    {
        var followed = Follow(KitText.DemoRead(demo), KitText.Demo(demo), OneOf);

        output.WriteLine($"{followed} pieces of advice of {demo} were followed.");
        followed.Should().BeGreaterThan(40 / (2 * OneOf));
    }

    // With and without a size of its own, without white to spare, where a plant grows and on the panel, whose size follows from what is seen before the sheet.
    [Theory]
    [InlineData("", "background-distance: 2 cm; target-white-margin: 0 stops", false)]
    [InlineData("width: 110 mm, height: 250 mm", "background-distance: 2 cm; target-white-margin: 0 stops", false)]
    [InlineData("carrier: frame", "background-distance: 2 cm; target-white-margin: 0 stops", true)]
    public void All_advice_before_an_upright_sheet_is_kept(string sheet, string setUp, bool onPanel)
    {
        var text = UprightKit.Of(sheet, setUp);
        var read = KitText.Read(onPanel
            ? text.Replace("ground-reflectance: 0", "ground-reflectance: 0.3", StringComparison.Ordinal).Replace("camera-pitch: 0°", "camera-pitch: 10°", StringComparison.Ordinal).Replace("    height-over-ground: 20 cm\n", "", StringComparison.Ordinal).Replace("    lights:\n", "    lights:\n      - {flash: one, role: below, distance: 45 cm}\n", StringComparison.Ordinal)
            : text);
        var plan = KitPlanner.Plan(read);

        plan.Exposures.Should().OnlyContain(exposure => exposure.OnPanel == onPanel);
        Follow(read, plan).Should().BeGreaterThan(3);
        plan.Exposures.SelectMany(exposure => plan.Advice.Of(exposure).Symptoms).Should().Contain(symptom => symptom.Seen == Symptom.EatenEdges && symptom.Advice != null);
    }

    [Fact]
    public void All_advice_for_kits_as_photographers_own_them_is_kept()
    {
        var followed = 0;
        LikelyKits.Any.Sample(
            kit =>
            {
                var read = new KitReadResult(kit, [], [], new());
                followed += Follow(read, KitPlanner.Plan(read));
            },
            iter: Kits,
            threads: 1);

        output.WriteLine($"{followed} pieces of advice of {Kits} random kits were followed.");
        followed.Should().BeGreaterThan(Kits);
    }

    [Fact]
    public void All_advice_for_any_readable_kit_is_kept() => RandomKits.Any.Sample(
        kit =>
        {
            var read = new KitReadResult(kit, [], [], new());
            Follow(read, KitPlanner.Plan(read));
        },
        iter: Math.Max(8, Kits / 4),
        threads: 1);

    // How many pieces were followed.
    private static int Follow(KitReadResult read, Plan plan, int oneOf = 1)
    {
        var session = new PlanSession();
        var followed = 0;
        foreach (var exposure in plan.Exposures)
        {
            var advice = plan.Advice.Of(exposure);
            foreach (var symptom in advice.Symptoms.Where(symptom => symptom.Advice is not null))
            {
                IsMended(exposure, symptom, Planned(exposure, symptom.Advice!));
            }

            foreach (var piece in OthersOf(advice).Where((_, i) => (i + Today) % oneOf == 0))
            {
                Planned(exposure, piece);
            }

            DoesWhatItSays(exposure, advice);
        }

        return followed;

        ExposurePlan Planned(ExposurePlan exposure, Advice piece)
        {
            var kit = piece.Changes.Aggregate(read.Kit!, (changed, change) => change.Apply(changed));
            var planned = session.Plan(read with { Kit = kit }).Exposures.Single(then => then.SetUp == exposure.SetUp && then.Framing.Name == piece.Promise.Framing.Name);
            IsAsPromised(planned, piece.Promise);
            IsOnTheGear(read.Kit!, piece.Promise);
            followed++;
            return planned;
        }
    }

    private static IEnumerable<Advice> OthersOf(CardAdvice advice) => advice.WhenLightChanges.Select(step => step.Advice)
        .Concat(advice.WhenLightChanges.Select(step => step.Steadied).OfType<Advice>())
        .Concat(advice.Distances.SelectMany(of => of.Steps).Select(step => step.Advice))
        .Concat(advice.Mending);

    private static void IsAsPromised(ExposurePlan planned, Promise promise)
    {
        planned.IsSetLike(promise).Should().BeTrue("the settings are those of the advice");
        planned.Verdict.Verdict.Should().Be(promise.Verdict.Verdict);
        Levels(planned).Zip(Levels(promise)).Should().OnlyContain(pair => Math.Abs(pair.First - pair.Second) < Same || (double.IsNaN(pair.First) && double.IsNaN(pair.Second)));
    }

    private static double[] Levels(ExposurePlan exposure) =>
    [
        exposure.WhiteMargin?.Value ?? double.NaN, exposure.BrightestMargin?.Value ?? double.NaN, exposure.HighestMargin?.Value ?? double.NaN, exposure.Veil?.Value ?? double.NaN,
        exposure.AmbientLevel.Value, exposure.BackgroundLevel?.Value ?? double.NaN, exposure.Uplight?.Value ?? double.NaN,
        exposure.EdgeSpill?.Strongest.AgainstKey.Value ?? double.NaN, exposure.Sharpness.SmearPixels, exposure.Verdict.FirstFrame ?? double.NaN,
    ];

    private static double[] Levels(Promise promise) =>
    [
        promise.WhiteMargin?.Value ?? double.NaN, promise.BrightestMargin?.Value ?? double.NaN, promise.HighestMargin?.Value ?? double.NaN, promise.Veil?.Value ?? double.NaN,
        promise.AmbientLevel.Value, promise.BackgroundLevel?.Value ?? double.NaN, promise.Uplight?.Value ?? double.NaN,
        promise.EdgeSpill?.Value ?? double.NaN, promise.SmearPixels, promise.Verdict.FirstFrame ?? double.NaN,
    ];

    // Marks are rounded, so a third of a stop is the play of each limit.
    private static void IsOnTheGear(KitSpec kit, Promise promise)
    {
        const double click = 1.27;
        var lens = kit.Lenses.Single(lens => lens.Name == promise.Framing.Lens);
        promise.Aperture.Value.Should().BeInRange(lens.WidestAperture.Value / 1.13, lens.SmallestAperture.Value * 1.13);
        promise.Iso.Value.Should().BeInRange(kit.Camera.LowestIso.Value / click, kit.Camera.HighestIso.Value * click);
        promise.Shutter.Seconds.Should().BeGreaterThan(kit.Camera.FlashSync.Seconds / click);
        (promise.Filter is null || kit.Accessories.Filters.Any(filter => filter.Name == promise.Filter)).Should().BeTrue("a filter comes out of the bag");
        foreach (var light in promise.Lights)
        {
            var lowest = ThirdStopSeries.FromMark(kit.Flashes.Single(flash => flash.Name == light.Flash).LowestPower).Fraction;
            light.Power.Fraction.Should().BeInRange(lowest / click, 1);
        }
    }

    private static void IsMended(ExposurePlan now, SymptomAdvice symptom, ExposurePlan then)
    {
        (then.Verdict.Verdict <= now.Verdict.Verdict).Should().BeTrue($"{symptom.Seen} is not mended by breaking something else");
        Mends(symptom.Seen, now, then).Should().BeTrue($"{symptom.Seen} is mended");
        (symptom.Advice!.Changes.Count == 0 || symptom.Advice.Changes.Any(change => change.IsDoneByHand) || !then.IsSetLike(now)).Should().BeTrue("there is something to turn");
    }

    private static void DoesWhatItSays(ExposurePlan now, CardAdvice advice)
    {
        advice.Symptoms.Where(symptom => symptom.Wait is not null).Should().NotContain(symptom => Math.Abs(symptom.Wait!.Value.Seconds - now.Lights.Max(light => light.RecycleTime.Seconds)) > Same);
        advice.Distances.SelectMany(of => of.Steps).Should().NotContain(step => !step.Advice.Promise.IsUsable || step.Advice.Promise.Iso != now.Iso || step.Advice.Promise.Shutter != now.Shutter);
        advice.Mending.Should().NotContain(change => change.Promise.Verdict.Verdict >= now.Verdict.Verdict);
        advice.WhenLightChanges.Count(step => step.IsPlanned).Should().Be(now.IsUsable ? 1 : 0);
        advice.WhenLightChanges.Zip(advice.WhenLightChanges.Skip(1)).Should().NotContain(pair => pair.First.Darkest.AtIso100 <= pair.Second.Brightest.AtIso100);
    }

    // What each symptom asks for, told apart from how the advice was found.
    private static bool Mends(Symptom seen, ExposurePlan now, ExposurePlan then) => seen switch
    {
        Symptom.GreyCorners => then.WhiteMargin!.Value.Value >= now.WhiteMargin!.Value.Value + 0.3,
        Symptom.NothingBlinks => then.WhiteMargin!.Value.Value >= -Same && !then.IsSetLike(now),
        Symptom.WashedOut => then.BrightestMargin!.Value.Value <= now.BrightestMargin!.Value.Value - 0.3 && then.WhiteMargin!.Value.Value >= -Same,
        Symptom.EatenLegs => then.Uplight!.Value.Value <= now.Uplight!.Value.Value - 0.3 && then.WhiteMargin!.Value.Value >= -Same,
        Symptom.EatenEdges => then.EdgeSpill!.Strongest.AgainstKey.Value <= now.EdgeSpill!.Strongest.AgainstKey.Value - 0.3 && then.WhiteMargin!.Value.Value >= -Same,
        Symptom.HotSpot => (then.BrightestMargin! - then.WhiteMargin!).Value.Value < (now.BrightestMargin! - now.WhiteMargin!).Value.Value * 0.8,
        Symptom.FrameMissing => then.Lights.Max(light => light.RecycleTime) < now.Lights.Max(light => light.RecycleTime) * 0.75,
        Symptom.Smeared => then.Sharpness.SmearPixels < now.Sharpness.SmearPixels * 0.65 && (!now.ShowsHabitat || Math.Abs(then.AmbientLevel.Value - now.AmbientLevel.Value) <= 0.34),
        Symptom.BackgroundShowsLit => then.BackgroundLevel!.Value.Value < now.BackgroundLevel!.Value.Value - 0.3,
        Symptom.LensShadow => then.Framing.WorkingDistance > now.Framing.WorkingDistance || then.Lights.Any(light => light.LensLoss.Value < Before(now, light).LensLoss.Value - 0.02),
        Symptom.OutlineLost => then.Lights.Any(light => light.Budget.Total.Value > Before(now, light).Budget.Total.Value + 0.1),
        Symptom.SubjectDark => then.Lights.Any(light => Given(then, light) > Given(now, Before(now, light)) * 1.1),
        Symptom.SubjectBright or Symptom.FlashShows => then.Lights.Any(light => Given(then, light) < Given(now, Before(now, light)) / 1.1),
        _ => true,
    };

    private static LightPlan Before(ExposurePlan now, LightPlan light) => now.Lights.Single(before => before.Place == light.Place);

    // What a flash gives to the picture by its dial and the camera's: power times speed.
    private static double Given(ExposurePlan exposure, LightPlan light) => light.Power.Fraction * exposure.Iso.Value;
}
