using StudioKit.Kits.SetUps;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>Flash and daylight add on the subject (superposition of light).</summary>
public sealed class AmbientShareTests
{
    // Powers come in thirds of a stop, rounded to the nearest.
    private const double HalfClick = (1.0 / 6) + 1e-6;

    // With daylight about a stop under the flash's level the two halves make one whole; a flash that ignored it would be a stop too much.
    [Fact]
    public void Above_a_white_background_the_flash_gives_only_what_daylight_leaves()
    {
        var exposure = Only("white-background", "EV 14", "ambient-below-flash: 1 stop, iso: 400", "{flash: one, role: below, distance: 30 cm}, {flash: two, role: above, distance: 40 cm}");

        var daylight = exposure.AmbientLevel.Value;
        daylight.Should().BeInRange(-1 - (1.0 / 3), -1);
        exposure.Lights.Single(light => light.Role == LightRole.Above).Budget.Total.Value
            .Should().BeApproximately(Math.Log2(1 - Math.Pow(2, daylight)), HalfClick, "flash and daylight together expose the subject");
    }

    // A fill is asked for at its own level beside the daylight that draws the picture: -2 stops are -2 stops, at noon and at dusk.
    [Theory]
    [InlineData("daylight-fill", "EV 14")]
    [InlineData("daylight-fill", "EV 12")]
    [InlineData("low-light-fill", "EV 9")]
    public void A_fill_keeps_its_level_under_the_daylight(string kind, string ambient)
    {
        var exposure = Only(kind, ambient, "fill-level: -2 stops", "{flash: two, role: fill, distance: 2 m}");

        exposure.AmbientLevel.Value.Should().BeApproximately(0, HalfClick);
        exposure.Lights.Single().Budget.Total.Value.Should().BeApproximately(-2, HalfClick);
    }

    // Independent errors in quadrature, each by its share of the light: s of daylight known to σa, 1 − s of flash known to σf.
    [Fact]
    public void Daylight_and_fill_make_the_exposure_unsure_each_by_its_share()
    {
        var exposure = Only("low-light-fill", "EV 9 ± 0.5 stop", "fill-level: -1 stop", "{flash: two, role: fill, distance: 2 m}");

        var (daylight, fill) = (Math.Pow(2, exposure.AmbientLevel.Value), Math.Pow(2, exposure.Lights[0].Budget.Total.Value));
        var share = daylight / (daylight + fill);
        share.Should().BeInRange(0.6, 0.72, "a stop under the daylight is a third of all");
        exposure.Uncertainty.Value.Should().BeApproximately(double.Hypot(share * 0.5, (1 - share) * exposure.Lights[0].Budget.Uncertainty.Value), 1e-9);
    }

    private static ExposurePlan Only(string kind, string ambient, string more, string lights)
    {
        var exposure = HandKit.Plan(
            $$"""
            set-ups:
              - {name: mixed, kind: {{kind}}, aperture: f/16, ambient: {{ambient}}, camera-pitch: 90°, {{more}}, lights: [{{lights}}]}
            """).Exposures.Single();
        exposure.Verdict.Missed.Should().BeEmpty();
        return exposure;
    }
}
