using StudioKit.Kits.SetUps;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Tests.ByHand;

namespace StudioKit.Planning.Tests.Advising;

public sealed class DistanceTests
{
    // Inverse square: half as far again takes 2·log₂ 1.4 stops more, rounded to a click.
    [Fact]
    public void From_another_distance_a_key_lights_with_the_square()
    {
        var plan = KitText.Plan(HandKit.Of("""
            set-ups:
              - {name: black, kind: dark-background, aperture: f/16, shutter: 1/200 s, iso: 400, background-distance: 5 m, lights: [{flash: one, role: key, distance: 50 cm}]}

            """));
        var key = DistancesOf(plan, LightRole.Key);

        foreach (var step in key.Steps)
        {
            Math.Log2(step.Power.Power.Fraction / key.Light.Power.Fraction).Should().BeApproximately(2 * Math.Log2(step.Distance / key.Light.Distance), (1.0 / 3) + 0.01);
        }

        key.Steps.Count.Should().BeGreaterThan(3);
        key.Steps.Where(step => step.IsPlanned).Should().ContainSingle().Which.Power.Should().Be(key.Light.Mark);
    }

    // From 22 cm the corners of a wide frame lie far off the flash's axis: the row that the planned distance's fall-off would give is 2 1/3 stops too dark there.
    [Fact]
    public void A_flash_below_that_comes_near_is_offered_only_where_its_corners_stay_white_and_its_middle_does_not_veil()
    {
        var plan = KitText.Demo("fen-edge.yaml");

        var steps = plan.Exposures.Where(exposure => exposure.OnPanel)
            .SelectMany(exposure => plan.Advice.Of(exposure).Distances.Where(of => of.Light.Role == LightRole.Below).SelectMany(of => of.Steps)).ToList();

        steps.Should().NotBeEmpty();
        steps.Should().OnlyContain(step => step.Advice.Promise.WhiteMargin!.Value.Value >= (1.0 / 3) - 1e-6
            && step.Advice.Promise.BrightestMargin!.Value.Value <= step.Advice.Promise.HighestMargin!.Value.Value + 1e-6);
    }

    // The panel stands half a metre over the ground; the light of every row is that of a kit written so and planned by itself.
    [Theory]
    [InlineData(22)]
    [InlineData(38)]
    public void What_a_row_says_is_what_a_kit_written_so_asks_for_or_there_is_no_row(int centimetres)
    {
        var plan = KitText.Demo("fen-edge.yaml");
        var moved = KitText.Plan(KitText.DemoText("fen-edge.yaml").Replace("role: below, distance: 45 cm", $"role: below, distance: {centimetres} cm", StringComparison.Ordinal));

        foreach (var card in plan.Exposures.Where(exposure => exposure.OnPanel))
        {
            var written = moved.Exposures.Single(exposure => exposure.SetUp == card.SetUp && exposure.Framing.Name == card.Framing.Name);
            var rows = plan.Advice.Of(card).Distances.Where(of => of.Light.Role == LightRole.Below).SelectMany(of => of.Steps)
                .Where(step => Math.Round(step.Distance.Centimeters) == centimetres);
            rows.Select(row => row.Power).Should().Equal(rows.Any() ? [written.Lights[0].Mark] : []);
            rows.Any().Should().Be(written.Verdict.Verdict <= card.Verdict.Verdict && written.Iso == card.Iso && moved.Frame!.Geometry.Refused == plan.Frame!.Geometry.Refused);
        }
    }

    [Fact]
    public void A_flash_below_is_never_sent_under_the_ground()
    {
        var plan = KitText.Demo("fen-edge.yaml");

        plan.Exposures.SelectMany(exposure => plan.Advice.Of(exposure).Distances).Where(of => of.Light.Role == LightRole.Below)
            .SelectMany(of => of.Steps).Should().OnlyContain(step => step.Distance < plan.Frame!.Geometry.PanelHeight);
    }

    private static LightDistances DistancesOf(Plan plan, LightRole role) =>
        plan.Advice.Of(plan.Exposures.Single()).Distances.Single(of => of.Light.Role == role);
}
