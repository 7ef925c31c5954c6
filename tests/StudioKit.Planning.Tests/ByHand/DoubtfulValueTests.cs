namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A value that is doubted comes with the measurement that would settle it; one that is usual comes without a word.</summary>
public sealed class DoubtfulValueTests
{
    private const string Session = "set-ups: [{name: black, kind: dark-background, aperture: f/16, shutter: 1/200 s, iso: 400, background-distance: 5 m, lights: [{flash: one, role: key, modifier: box, distance: 50 cm}, {flash: two, role: rim, modifier: box, distance: 60 cm}]}]\n";

    // A beam of 36° × 24 mm at 35 mm is spread into a half space: the flux of an even cosⁿ beam goes to a Lambertian front, log₂((n + 1)/2T). With n about 8 that
    // is 2.2 stops at T = 1, 2.7 at 0.7: what small boxes with two diffusers really lose (common practice, no source). At 0.4 it is 3.5.
    [Theory]
    [InlineData("0.7", 0)]
    [InlineData("0.4", 1)]
    public void A_small_softbox_is_called_unusual_only_beyond_what_double_diffusers_lose(string transmittance, int notes)
    {
        var exposure = KitText.Plan(HandKit.Of($"modifiers: [{{name: box, kind: softbox, size: 150 mm x 120 mm, transmittance: {transmittance}}}]\n" + Session)).Exposures.Single();

        var said = exposure.Caveats.Where(caveat => caveat.Contains("box", StringComparison.Ordinal)).ToList();
        said.Should().HaveCount(notes, "it is said once, for all its flashes");
        said.Where(caveat => !(caveat.Contains("Measure", StringComparison.Ordinal) && caveat.Contains("'loss'", StringComparison.Ordinal))).Should().BeEmpty();
    }

    // Neither length nor closest focus is told of an internal-focusing lens, and a close-up lens stands before it.
    [Fact]
    public void Whatever_is_guessed_of_a_lens_names_what_to_measure()
    {
        var framing = KitText.Plan(
            """
            kit: Cottongrass mire
            camera: {name: body, sensor: 36 mm x 24 mm}
            lenses: [{name: rush 100, focal-length: 100 mm, focusing: internal, largest-magnification: 1:4, magnifications: [1:2]}]
            accessories: {close-up-lenses: [{name: plus three, power: +3 dpt}, {name: plus five, power: +5 dpt}]}

            """).Framings.Single();

        framing.Caveats.Where(caveat => caveat.Contains("guess", StringComparison.Ordinal) || caveat.Contains("taken to", StringComparison.Ordinal)).Should().HaveCountGreaterThan(1)
            .And.OnlyContain(caveat => caveat.Contains("easure", StringComparison.Ordinal));
    }

    [Fact]
    public void A_guide_number_at_another_zoom_names_the_meter_and_how_to_read_it() =>
        KitText.Plan(HandKit.Of(HandKit.White.Replace("distance: 45 cm", "distance: 45 cm, zoom: 105 mm", StringComparison.Ordinal), panel: "width: 400 mm, depth: 400 mm"))
            .Exposures.Single().Caveats.Should().ContainSingle(caveat => caveat.Contains("one", StringComparison.Ordinal) && caveat.Contains("flash meter at ISO 100", StringComparison.Ordinal));
}
