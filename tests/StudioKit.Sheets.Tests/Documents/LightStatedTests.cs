using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Json;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>What the sheets say of the light that they are made for, and of light from below that is too strong.</summary>
public sealed class LightStatedTests
{
    // Two heads of GN 30: the one below must give more than a stop over clipping, more than twice what is right from above (see the plan's own tests).
    private static readonly Plan Glowing = KitPlanner.Plan(KitReader.Parse(
        """
        kit: Sallow bog
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400, mass: 700 g}
        lenses:
          - {name: sallow 60, focal-length: 60 mm, aperture: f/2.8 to f/32, focusing: unit, largest-magnification: 1:1, magnifications: [1:2], mass: 300 g}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100, 35 mm", head: 70 mm x 40 mm, mass: 300 g}
          - {name: willow, guide-number: "30 m @ ISO 100, 35 mm", mass: 300 g}
        panel: {width: 400 mm, depth: 300 mm, transmittance: 0.5, underside-reflectance: 0}
        frame: {height: 500 mm}
        site: {ground-reflectance: 0}
        subjects: [{name: crane fly, group: flying-insects, length: 40 mm}]
        set-ups:
          - name: white
            kind: white-background
            ambient: EV 7.5
            camera-pitch: 90°
            target-white-margin: 1 stop
            lights: [{flash: sedge, role: below, distance: 40 cm}, {flash: willow, role: above, distance: 40 cm}]
          - {name: dusk, kind: low-light-fill, ambient: EV 8.5, lights: [{flash: willow, role: fill, distance: 2 m}]}
        """,
        "kit.yaml",
        PartsLibrary.Embedded));

    [Fact]
    public void The_report_states_the_light_of_each_set_up() =>
        Text(PlanReport.Make(Glowing, Pages.Stamp, new PageSetup(Paper.A4))).Should().Contain("Made for EV 7.5").And.Contain("Made for EV 8.5");

    [Fact]
    public void The_light_sheet_warns_of_eaten_legs_with_what_the_plan_turns_against_it()
    {
        var white = Glowing.Exposures.Single(exposure => exposure.SetUp == "white");
        white.Warnings.Should().ContainSingle();
        var less = Glowing.Advice.Of(white).Symptoms.Single(symptom => symptom.Seen == Planning.Changes.Symptom.EatenLegs).Advice!.Promise;

        Text(LightSheet.Make(Glowing, Pages.Stamp, new PageSetup(Paper.A4))).Should().Contain("it eats legs and hairs (common practice). Against it: flash below to " + less.Lights[0].Mark.Nominal)
            .And.Contain(FormattableString.Invariant($"which leaves {less.Uplight!.Value.Value:+0.0}"));
    }

    [Fact]
    public void A_warning_is_data_in_the_JSON_of_a_plan()
    {
        using var json = System.Text.Json.JsonDocument.Parse(PlanJson.Write(Glowing));

        var exposures = json.RootElement.GetProperty("exposures").EnumerateArray().ToList();
        exposures[0].GetProperty("warnings").EnumerateArray().Single().GetProperty("seen").GetString().Should().Be("eaten-legs");
        exposures[1].GetProperty("warnings").EnumerateArray().Should().BeEmpty();
    }

    private static string Text(SheetDocument sheet) => string.Join(' ', Paginator.Lay(sheet).Document.Pages.SelectMany(Pages.Labels));
}
