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
