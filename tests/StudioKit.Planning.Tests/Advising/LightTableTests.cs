using StudioKit.Planning.Advising;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Advising;

public sealed class LightTableTests
{
    private static readonly Plan Demo = KitText.Demo("fen-edge.yaml");

    // Held by hand at dusk, with a tripod at hand: in less light the hand is too unsteady for the time that the scene takes.
    private static readonly Plan Held = KitText.Plan(HandKit.Of("""
        supports: [{name: tripod, kind: tripod}]
        set-ups: [{name: dusk, kind: low-light-fill, aperture: f/8, iso: 400, ambient: EV 9, camera-pitch: 15°, fill-level: -1 stop, lights: [{flash: one, role: fill, distance: 2 m}]}]

        """).Replace("hand-speed: 0 m/s", "hand-speed: 5 mm/s", StringComparison.Ordinal));

    private static IEnumerable<(ExposurePlan Exposure, LightStep Step)> Steps => Of(Demo);

    private static IEnumerable<(ExposurePlan Exposure, LightStep Step)> Of(Plan plan) =>
        plan.Exposures.Where(exposure => exposure.IsUsable).SelectMany(exposure => plan.Advice.Of(exposure).WhenLightChanges.Select(step => (exposure, step)));

    // ISO 2720: EV = log₂(N²/t) at ISO 100; an ISO speed S adds log₂(S/100). Marks are a third of a stop apart.
    [Fact]
    public void A_meter_set_to_the_cards_aperture_and_iso_reads_the_shutter_that_the_table_names()
    {
        foreach (var (exposure, step) in Steps)
        {
            var reading = Math.Log2(exposure.Aperture.Value * exposure.Aperture.Value / step.ReadsInBrightest.Seconds) - Math.Log2(exposure.Iso.Value / 100);
            reading.Should().BeApproximately(step.Brightest.AtIso100, (1.0 / 6) + 0.01);
        }
    }

    [Fact]
    public void A_card_tells_of_four_stops_brighter_and_four_darker_without_a_gap()
    {
        foreach (var exposure in Demo.Exposures.Where(exposure => exposure.IsUsable))
        {
            var steps = Demo.Advice.Of(exposure).WhenLightChanges;

            steps[0].Brightest.AtIso100.Should().BeApproximately(exposure.Ambient.AtIso100 + 4, 1e-9);
            steps[^1].Darkest.AtIso100.Should().BeApproximately(exposure.Ambient.AtIso100 - 4, 1e-9);
            steps.Zip(steps.Skip(1)).Should().NotContain(pair => Math.Abs(pair.First.Darkest.AtIso100 - pair.Second.Brightest.AtIso100 - 1) > 1e-9);
        }
    }

    [Fact]
    public void The_light_that_a_card_is_made_for_asks_for_the_settings_of_the_card()
    {
        foreach (var (exposure, step) in Steps.Where(pair => pair.Step.IsPlanned))
        {
            step.Brightest.AtIso100.Should().BeGreaterThanOrEqualTo(exposure.Ambient.AtIso100);
            step.Darkest.AtIso100.Should().BeLessThanOrEqualTo(exposure.Ambient.AtIso100);
            exposure.IsSetLike(step.Advice.Promise).Should().BeTrue();
        }
    }

    // Daylight must stay three stops under the flash on white: a stop more of it asks for a stop less ISO, and so a stop more flash.
    [Fact]
    public void In_brighter_light_a_white_background_asks_for_less_iso_and_more_flash()
    {
        var white = Demo.Exposures.Single(exposure => exposure.SetUp == "white" && exposure.Framing.Name == "alder 180 at 1:4");
        var brighter = Demo.Advice.Of(white).WhenLightChanges.Single(step => step.Brightest.AtIso100 == 12).Advice.Promise;

        brighter.Iso.Value.Should().BeLessThan(white.Iso.Value);
        (brighter.Lights[0].Power.Fraction / white.Lights[0].Power.Fraction).Should().BeApproximately(white.Iso.Value / brighter.Iso.Value, 0.01 * white.Iso.Value);
        brighter.AmbientLevel.Value.Should().BeLessThanOrEqualTo(-3 + 1e-6);
    }

    [Fact]
    public void Shade_by_as_much_as_the_table_says_brings_back_a_light_in_which_the_exposure_works()
    {
        var shaded = Steps.Where(pair => pair.Step.Shade is not null).ToList();

        shaded.Should().NotBeEmpty();
        foreach (var (exposure, step) in shaded)
        {
            var left = step.Brightest.AtIso100 - step.Shade!.Value.Value;
            var read = KitText.DemoRead("fen-edge.yaml");
            var kit = new KitChange.Ambient(exposure.SetUp, new Physics.Exposure.ExposureValue(left)).Apply(read.Kit!);
            KitPlanner.Plan(read with { Kit = kit }).Exposures.Single(planned => planned.SetUp == exposure.SetUp && planned.Framing.Name == exposure.Framing.Name)
                .IsUsable.Should().BeTrue();
        }
    }

    [Fact]
    public void What_the_camera_is_to_rest_on_is_in_the_bag_and_steadier_than_what_it_rests_on() =>
        Of(Held).Where(pair => pair.Step.Steadied is not null).Should().NotBeEmpty().And.NotContain(pair =>
            !pair.Step.Steadied!.Changes.OfType<KitChange.Rest>().Any(rest => IsInTheBag(rest.Support)) || pair.Step.Steadied!.Promise.SmearPixels >= pair.Step.Advice.Promise.SmearPixels);

    private static bool IsInTheBag(string name) => Held.Kit.Supports.Any(support => support.Name == name);
}
