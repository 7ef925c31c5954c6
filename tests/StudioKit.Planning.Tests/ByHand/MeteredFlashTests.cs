namespace StudioKit.Planning.Tests.ByHand;

/// <summary>A flash metered by the camera, through a plan: 72 mm × 48 mm of field at half life size, of which the middle quarter, 864 mm², is metered.</summary>
public sealed class MeteredFlashTests
{
    private const string Beetle =
        """
        subjects:
          - {name: beetle, group: crawling-insects-and-spiders, length: 40 mm, reflectance: 0.05}

        """;

    // An ellipse 20 mm wide and 40 mm long: π/4 · 800 = 628 mm² of 864, 72.7 %; on the sheet, which throws back what its underside does.
    [Fact]
    public void Above_the_panel_the_meter_sees_beetle_and_sheet_by_the_same_light()
    {
        var metered = Above(Beetle, "metered: yes").Metered!;

        metered.SubjectShare.Should().BeApproximately(0.727, 0.001);
        metered.BackgroundReflectance.Should().Be(0, "this sheet throws nothing back");
        metered.Compensation.Value.Should().BeApproximately(Math.Log2(0.727 * 0.05 / 0.15708) + LevelOf(Beetle), 0.01);
    }

    // Two thirds of the way again behind the subject: (0.4/(0.4 + 0.6))² = 0.16, −2.64 stops.
    [Fact]
    public void A_background_gets_the_flash_by_the_inverse_square()
    {
        var metered = Scene("background-distance: 60 cm, background-reflectance: 0.5").Metered!;

        metered.BackgroundReflectance.Should().Be(0.5);
        (metered.BackgroundLevel - Level(Scene("background-distance: 60 cm"))).Value.Should().BeApproximately(-2.64, 0.01);
    }

    [Fact]
    public void A_share_that_is_given_is_taken() => Scene("metered-share: 30 %").Metered!.SubjectShare.Should().BeApproximately(0.3, 1e-9);

    [Fact]
    public void A_flash_that_is_not_metered_or_lies_below_has_no_compensation()
    {
        Above(Beetle, "").Metered.Should().BeNull();
        HandKit.Plan(Beetle + HandKit.White, one: "metered: yes").Exposures.Single().Lights[0].Metered.Should().BeNull("it burns the sheet out");
    }

    // Little in the frame before a background that the flash hardly reaches: no camera dials that far.
    [Fact]
    public void What_no_camera_dials_is_told_apart() => Scene("metered-share: 2 %, background-distance: 20 m").Metered!.CanBeDialled.Should().BeFalse();

    private static double LevelOf(string subjects) => Level(Above(subjects, "metered: yes")).Value;

    // What the light budget comes to is the level that the flash gives.
    private static Physics.Exposure.Stops Level(LightPlan light) => light.Budget.Total;

    private static LightPlan Above(string subjects, string two) => HandKit.Plan(subjects + HandKit.White, two: two).Exposures.Single().Lights[1];

    private static LightPlan Scene(string keys) => HandKit.Plan(
        Beetle + $$"""
        set-ups:
          - {name: scene, kind: daylight-fill, aperture: f/11, ambient: EV 14, {{keys}}, lights: [{flash: two, role: fill, distance: 40 cm}]}

        """, two: "metered: yes").Exposures.Single().Lights[0];
}
