namespace StudioKit.Planning.Tests.Plans;

/// <summary>Settings that practice arrives at (common practice, no source), through the whole plan from a kit file; within a stop.</summary>
public sealed class CommonPracticeTests
{
    // A small flash 45 cm under the sheet, another in a dome 30 cm over the subject, under an umbrella (EV 10).
    [Theory]
    [InlineData(400)]
    [InlineData(500)]
    public void White_background_at_life_size_takes_a_fifth_below_and_a_sixth_above(int iso)
    {
        var exposure = Only(
            $$"""
            set-ups:
              - name: white
                kind: white-background
                lenses: [short]
                aperture: f/16
                shutter: 1/125 s
                iso: {{iso}}
                ambient: EV 10
                camera-pitch: 60°
                lights:
                  - {flash: one, role: below, distance: 45 cm}
                  - {flash: two, role: above, modifier: dome, distance: 20 cm}
            """,
            "short at 1:1");

        exposure.Verdict.Missed.Should().BeEmpty();
        exposure.Iso.Nominal.Should().Be($"ISO {iso}");
        StopsFrom(exposure.Lights[0], 1 / 5.0).Should().BeInRange(-1, 1);
        StopsFrom(exposure.Lights[1], 1 / 6.4).Should().BeInRange(-1, 1);
        exposure.WhiteMargin!.Value.Value.Should().BeGreaterThanOrEqualTo((1.0 / 3) - 1e-9);
    }

    // Forest interior (EV 9), key in a small softbox at 50 cm, bare rim behind at 60 cm, half life size.
    [Fact]
    public void Dark_background_in_forest_shade_is_black_with_a_fifth_and_a_rim_of_a_sixth()
    {
        var exposure = Only(
            """
            set-ups:
              - name: black
                kind: dark-background
                lenses: [short]
                aperture: f/16
                shutter: 1/200 s
                iso: 640
                ambient: EV 9
                background-distance: 2 m
                lights:
                  - {flash: one, role: key, modifier: small softbox, distance: 50 cm}
                  - {flash: two, role: rim, distance: 60 cm}
            """,
            "short at 1:2");

        exposure.Verdict.Missed.Should().BeEmpty();
        exposure.Iso.Nominal.Should().Be("ISO 640");
        exposure.AmbientLevel.Value.Should().BeLessThanOrEqualTo(-4);
        StopsFrom(exposure.Lights[0], 1 / 5.0).Should().BeInRange(-1, 1);
        StopsFrom(exposure.Lights[1], 1 / 6.4).Should().BeInRange(-1, 1);
    }

    // A 180 mm lens at a quarter life size, braced for 1/60 s: last light in the open (EV 10), day's end under trees (EV 9).
    [Theory]
    [InlineData("EV 10", "-1/3", 1250)]
    [InlineData("EV 9", "-2", 2500)]
    public void Dusk_with_fill_asks_for_the_ISO_that_practice_finds(string ambient, string fill, double iso)
    {
        var exposure = Only(Dusk(ambient, fill, ""), "long at 1:4");

        exposure.Verdict.Missed.Should().BeEmpty();
        exposure.Shutter.Nominal.Should().Be("1/60 s");
        Math.Log2(exposure.Iso.Value / iso).Should().BeInRange(-1, 1);
    }

    [Fact]
    public void A_polariser_costs_its_stops_of_ISO()
    {
        var bare = Only(Dusk("EV 11", "-1", ""), "long at 1:4");
        var polarised = Only(Dusk("EV 11", "-1", "filter: polariser"), "long at 1:4");

        // Both speeds are third-stop clicks, so half a click each way.
        Math.Log2(polarised.Iso.Value / bare.Iso.Value).Should().BeApproximately(1.5, (1.0 / 3) + 1e-6);
    }

    [Fact]
    public void Depth_at_life_size_and_f_11_is_under_a_few_millimetres()
    {
        var exposure = Only(Dusk("EV 12", "-1", "").Replace("[long]", "[short]", StringComparison.Ordinal), "short at 1:1");

        exposure.Sharpness.DepthOfField.Millimeters.Should().BeInRange(0.3, 3);
    }

    private static string Dusk(string ambient, string fill, string more) =>
        $$"""
        set-ups:
          - name: dusk
            kind: low-light-fill
            lenses: [long]
            aperture: f/11
            shutter: 1/60 s
            ambient: {{ambient}}
            fill-level: {{fill}} stop
            lights: [{flash: one, role: fill, modifier: dome, distance: 1 m}]
            {{more}}
        """;

    private static ExposurePlan Only(string setUps, string framing) =>
        KitTexts.PlanOf(setUps).Exposures.Single(exposure => exposure.Framing.Name == framing);

    private static double StopsFrom(LightPlan light, double practice) => Math.Log2(light.Power.Fraction / practice);
}
