using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Light adds (superposition): lights that share a level give that level together.</summary>
public sealed class LightsOfOneRoleTests
{
    private const string Key = "{flash: two, role: key, distance: 50 cm}";
    private const string Fill = "{flash: two, role: fill, distance: 50 cm}";
    private const string FarFill = "{flash: two, role: fill, distance: 2 m}";
    private const string Above = "{flash: two, role: above, distance: 50 cm}";

    // Half the light each is one stop less, and one stop is just three clicks of the dial.
    [Theory]
    [InlineData("dark-background", "", Key)]
    [InlineData("daylight-fill", "", FarFill)]
    [InlineData("low-light-fill", "", FarFill)]
    [InlineData("white-background", "{flash: one, role: below, distance: 45 cm}, ", Above)]
    public void Two_equal_lights_of_one_role_give_a_stop_less_each(string kind, string before, string light)
    {
        var alone = Only(kind, $"{before}{light}");
        var shared = Only(kind, $"{before}{light}, {light}");

        shared.Iso.Should().Be(alone.Iso);
        var (one, two) = (OnSubject(alone), OnSubject(shared));
        two.Should().HaveCount(2);
        two.Should().OnlyContain(
            each => Math.Abs((2 * each.Power.Fraction / one[0].Power.Fraction) - 1) < 1e-9,
            $"{one[0].Power.Nominal} alone is half of that for each of two");
    }

    // Key at level 0 and fill a stop under it: 1/(1 + ½) of the light from the key, half as much from the fill, all in all 1. Each power is
    // rounded to the nearest third, so a sixth of a stop of play for the sum and a third for the difference.
    [Fact]
    public void A_key_leaves_to_the_fill_its_part_of_the_level()
    {
        var lights = OnSubject(Only("dark-background", $"{Key}, {Fill}"));

        var (key, fill) = (lights[0].Budget.Total.Value, lights[1].Budget.Total.Value);
        key.Should().BeApproximately(Math.Log2(1 / 1.5), (1.0 / 6) + 1e-6);
        (key - fill).Should().BeApproximately(1, (1.0 / 3) + 1e-6);
        Math.Log2(Math.Pow(2, key) + Math.Pow(2, fill)).Should().BeApproximately(0, (1.0 / 6) + 1e-6);
    }

    private static List<LightPlan> OnSubject(ExposurePlan exposure) => [.. exposure.Lights.Where(light => light.Role != LightRole.Below)];

    private static ExposurePlan Only(string kind, string lights)
    {
        var exposure = HandKit.Plan(
            $$"""
            set-ups:
              - {name: shared, kind: {{kind}}, aperture: f/16, shutter: 1/200 s, iso: 400, camera-pitch: 90°, background-distance: 5 m, ambient: {{(kind.EndsWith("fill", StringComparison.Ordinal) ? "EV 14" : "EV 0")}}, lights: [{{lights}}]}
            """).Exposures.Single();
        exposure.Verdict.Missed.Should().BeEmpty();
        return exposure;
    }
}
