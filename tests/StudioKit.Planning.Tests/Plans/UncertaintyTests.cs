namespace StudioKit.Planning.Tests.Plans;

/// <summary>What the kit writes after <c>±</c> reaches the light account.</summary>
public sealed class UncertaintyTests
{
    // √Σσ² of the usual figures: guide number 1/3, outdoors 1/6, distance 5 % = 2·log₂ 1.05, transmittance 20 % = log₂ 1.2, scatter 1/6,
    // aperture 1/6, clip point 1/3 stop.
    [Fact]
    public void Without_any_the_usual_figures_combine_in_quadrature()
    {
        var expected = Math.Sqrt((2 / 9.0) + (3 / 36.0) + Math.Pow(2 * Math.Log2(1.05), 2) + Math.Pow(Math.Log2(1.2), 2));

        Of(KitTexts.Dark).Should().BeApproximately(expected, 1e-9);
    }

    // N_e = N·(1 + m/p) at m = 1/2. The 55 mm lens stands 114 mm from the sensor, 2.073 focal lengths: p = 1 + 0.6·0.073 = 1.044, give or take a quarter.
    [Fact]
    public void A_lens_whose_pupils_nobody_measured_makes_a_close_up_less_sure()
    {
        var measured = Of(KitTexts.Dark);
        var assumed = Of(KitTexts.Dark.Replace(", pupil-ratio: 1", "", StringComparison.Ordinal));

        // Half of what lies between a quarter less and a quarter more.
        var stops = Math.Log2((1 + (0.5 / (0.75 * 1.0436))) / (1 + (0.5 / (1.25 * 1.0436))));
        Math.Sqrt((assumed * assumed) - (measured * measured)).Should().BeApproximately(stops, 0.001);
    }

    [Fact]
    public void A_measured_guide_number_makes_the_exposure_surer_by_just_its_share()
    {
        var usual = Of(KitTexts.Dark);
        var measured = Of(KitTexts.Dark.Replace("\"30 m @ ISO 100, 35 mm\"", "\"30 m @ ISO 100, 35 mm ± 0.1 stop\"", StringComparison.Ordinal));

        ((usual * usual) - (measured * measured)).Should().BeApproximately((1 / 9.0) - 0.01, 1e-9);
    }

    // Light goes with the square of the guide number: a tenth more of it is 2·log₂ 1.1 = 0.275 stop.
    [Fact]
    public void A_tenth_of_a_guide_number_is_a_quarter_of_a_stop_and_a_little()
    {
        var usual = Of(KitTexts.Dark);
        var measured = Of(KitTexts.Dark.Replace("\"30 m @ ISO 100, 35 mm\"", "\"30 m @ ISO 100, 35 mm ± 10 %\"", StringComparison.Ordinal));

        ((usual * usual) - (measured * measured)).Should().BeApproximately((1 / 9.0) - (0.27500705 * 0.27500705), 1e-7);
    }

    // Light goes with the inverse square of the distance: 5 % is the usual figure, so 2·log₂ 1.05; 4.5 cm of 45 cm, a tenth, make 2·log₂ 1.1 of it.
    [Theory]
    [InlineData("± 4.5 cm")]
    [InlineData("± 10 %")]
    public void A_distance_counts_twice_in_stops(string known)
    {
        var usual = Of(KitTexts.Dark);
        var measured = Of(KitTexts.Dark, $"45 cm {known}");

        ((measured * measured) - (usual * usual)).Should().BeApproximately((0.27500705 * 0.27500705) - Math.Pow(2 * Math.Log2(1.05), 2), 1e-7);
    }

    [Theory]
    [InlineData("transmittance: 0.5", "transmittance: 0.5 ± 0.05", 0.1)]
    [InlineData("transmittance: 0.5", "transmittance: 0.5 ± 10 %", 0.1)]
    public void A_measured_transmittance_counts_in_stops(string written, string measured, double share)
    {
        var usual = Of(KitTexts.Dark);
        var surer = Of(KitTexts.Dark.Replace(written, measured, StringComparison.Ordinal));

        ((usual * usual) - (surer * surer)).Should().BeApproximately(
            Math.Pow(Math.Log2(1.2), 2) - Math.Pow(Math.Log2(1 + share), 2), 1e-9);
    }

    // A modifier's transmittance of 0.7 ± 0.1 is known to log₂ 1.143 = 0.193 stop; the shape of its beam stays a guess of a third, and both add in quadrature.
    [Fact]
    public void A_measured_modifier_keeps_the_doubt_about_its_beam()
    {
        double Above(string transmittance) => KitText.Plan(KitTexts.Dark.Replace("loss: 1.7 stops", $"transmittance: {transmittance}", StringComparison.Ordinal) +
            """
            set-ups:
              - name: white
                kind: white-background
                ambient: EV 10
                iso: 500
                lights: [{flash: one, role: below, distance: 45 cm}, {flash: two, role: above, modifier: dome, distance: 20 cm}]
            """).Exposures[0].Lights[1].Budget.Uncertainty.Value;

        (Math.Pow(Above("0.7 ± 0.1"), 2) - Math.Pow(Above("0.7"), 2)).Should().BeApproximately(Math.Pow(Math.Log2(0.8 / 0.7), 2), 1e-9);
    }

    [Fact]
    public void Metered_ambient_light_makes_available_light_surer()
    {
        var guessed = Dusk("EV 9").Uncertainty.Value;
        var metered = Dusk("EV 9 ± 0.2 stop").Uncertainty.Value;

        metered.Should().BeLessThan(guessed);
    }

    private static double Of(string text, string distance = "45 cm") => KitText.Plan(text +
        $$"""
        set-ups:
          - name: white
            kind: white-background
            lenses: [short]
            ambient: EV 10
            iso: 500
            lights: [{flash: one, role: below, distance: {{distance}}}, {flash: two, role: above, modifier: dome, distance: 20 cm}]
        """).Exposures[0].Uncertainty.Value;

    private static ExposurePlan Dusk(string ambient) => KitTexts.PlanOf(
        $$"""
        set-ups:
          - name: dusk
            kind: low-light-fill
            ambient: {{ambient}}
            fill-level: -2 stops
            shutter: 1/60 s
            lights: [{flash: one, role: fill, modifier: dome, distance: 1 m}]
        """).Exposures[0];
}
