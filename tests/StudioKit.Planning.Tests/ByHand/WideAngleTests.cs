using StudioKit.Physics.Optics;

namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A wide-angle lens in a kit: 15 mm, 0.20 m at 1:4, 44 mm from mount to sensor, 50 mm long as long as nobody says more.</summary>
public sealed class WideAngleTests
{
    // 200 mm less 44 mm of camera and 50 mm of lens; a lens that moves as a whole takes 3.75 mm more.
    [Theory]
    [InlineData("internal", 106)]
    [InlineData("unit", 102.25)]
    public void Closest_focus_and_magnification_are_trusted_together(string focusing, double room)
    {
        var framing = Plan(focusing).Framings.Single();

        framing.FocalLength.Millimeters.Should().BeApproximately(15, 1e-9);
        framing.SubjectToSensor.Millimeters.Should().BeApproximately(200, 1e-9);
        framing.WorkingDistance.Millimeters.Should().BeApproximately(room, 1e-9);
        framing.WorkingDistanceUncertainty.Millimeters.Should().BeGreaterThan(50.0 / 3, "a third of a length that was not given");
    }

    // N_e/N = 1 + (1/4)/p, p from 1.7 to 4.2 for retrofocus lenses: 0.17 to 0.4 stops, not 2.8.
    [Theory]
    [InlineData("internal")]
    [InlineData("unit")]
    public void Close_up_it_loses_a_fraction_of_a_stop(string focusing)
    {
        var framing = Plan(focusing).Framings.Single();

        (2 * Math.Log2(framing.EffectiveApertureFactor)).Should().BeInRange(0.15, 0.4);
        framing.PupilRatio.Should().BeInRange(1.7, 4.2);
    }

    [Fact]
    public void What_was_assumed_of_the_lens_makes_its_exposures_less_sure()
    {
        var (assumed, measured) = (Plan("unit"), Plan("unit, pupil-ratio: 2.5, length: 60 mm"));

        assumed.Framings.Single().Assumptions.Select(each => each.Kind).Should().Equal(LensAssumptionKind.FrontGlassToMount, LensAssumptionKind.PupilRatio);
        measured.Framings.Single().Assumptions.Should().BeEmpty();
        CloseFocus(assumed).Should().BeApproximately(assumed.Framings.Single().ExposureUncertainty.Value, 1e-12).And.BeGreaterThan(0.02);
        CloseFocus(measured).Should().BeApproximately(0, 1e-12);

        static double CloseFocus(Plan plan) => plan.Exposures.Single().Lights[0].Budget.Lines.Single(line => line.Item == "Close focus").Uncertainty.Value;
    }

    private static Plan Plan(string focusing) => KitText.Plan(
        $$"""
        kit: Cottongrass mire
        camera: {name: body, sensor: 36 mm x 24 mm, flash-sync: 1/200 s, iso: 100 to 6400}
        lenses: [{name: rush 15, focal-length: 15 mm, aperture: f/4 to f/22, largest-magnification: 1:4, closest-focus: 200 mm, magnifications: [1:4], focusing: {{focusing}}}]
        flashes: [{name: one, guide-number: "32 m @ ISO 100, 35 mm", head: 10 mm x 10 mm}]
        set-ups: [{name: dusk, kind: low-light-fill, aperture: f/16, ambient: EV 9, camera-pitch: 90°, fill-level: -2 stops, lights: [{flash: one, role: fill, distance: 2 m}]}]

        """);
}
