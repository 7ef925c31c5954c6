using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Changes;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A light partly behind the lens: the camera looks straight down, and the light hangs straight over it.</summary>
public sealed class LensShadeTests
{
    /// <summary>
    /// The rim of the lens hides a disc of the box: its radius is that of the rim times the box's distance over the glass's. What is left of the box's area is what
    /// lights the subject. A lattice of 144 points misses up to 0.03 stop of a disc's edge.
    /// </summary>
    [Fact]
    public void What_the_lens_hides_of_a_light_is_missing_in_its_exposure()
    {
        var exposure = Planned("elevation: 90°").Exposures.Single();
        var light = exposure.Lights.Single(light => light.Role == LightRole.Above);
        var radius = 0.02 * 0.4 / exposure.Framing.WorkingDistance.Meters;
        var left = 1 - (Math.PI * radius * radius / (0.4 * 0.4));

        left.Should().BeInRange(0.6, 0.98, "some of it is hidden, and not all");
        light.LensLoss.Value.Should().BeApproximately(-Math.Log2(left), 0.03);
        light.Budget.Lines.Single(line => line.Item == "Behind the lens").Stops.Value.Should().BeApproximately(Math.Log2(left), 0.03);
    }

    [Fact]
    public void A_light_beside_the_lens_loses_nothing()
    {
        var light = Planned("azimuth: -90°, elevation: 30°").Exposures.Single().Lights.Single(light => light.Role == LightRole.Above);

        light.LensLoss.Value.Should().Be(0);
        light.Budget.Lines.Should().NotContain(line => line.Item == "Behind the lens");
    }

    /// <summary>There is one lens only, so that no other can help.</summary>
    [Fact]
    public void Against_the_lenss_shadow_the_light_is_turned_to_where_it_is_clear()
    {
        var plan = Planned("elevation: 90°", box: "200 mm x 200 mm");
        var now = plan.Exposures.Single();

        var advice = plan.Advice.Of(now).Symptoms.Single(symptom => symptom.Seen == Symptom.LensShadow).Advice!;

        var turn = advice.Changes.Should().ContainSingle().Which.Should().BeOfType<KitChange.Turn>().Which;
        var then = KitPlanner.Plan(new KitReadResult(turn.Apply(plan.Kit), [], [], new())).Exposures.Single();
        then.Lights.Single(light => light.Place == turn.Light).LensLoss.Value.Should().BeLessThan(now.Lights.Single(light => light.Place == turn.Light).LensLoss.Value / 2);
    }

    private static Plan Planned(string from, string box = "400 mm x 400 mm") => HandKit.Plan(
        $"modifiers: [{{name: box, kind: softbox, size: {box}}}]\n" + HandKit.White.Replace("role: above, distance: 40 cm", $"role: above, modifier: box, distance: 40 cm, {from}", StringComparison.Ordinal), lens: "front-diameter: 40 mm");
}
