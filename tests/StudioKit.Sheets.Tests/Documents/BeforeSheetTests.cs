using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Changes;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Json;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>What the report and the JSON of a plan say of a plant close before an upright sheet.</summary>
public sealed class BeforeSheetTests
{
    // Close before a large sheet an edge gets next to half of what leaves it; two stops over clipping that is more than twice what the key gives.
    private static readonly Plan Close = KitPlanner.Plan(KitReader.Parse(
        """
        kit: Sallow bog
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400, mass: 700 g}
        lenses:
          - {name: sallow 60, focal-length: 60 mm, aperture: f/2.8 to f/32, focusing: unit, largest-magnification: 1:1, magnifications: [1:2], mass: 300 g}
        flashes:
          - {name: sedge, guide-number: "32 m @ ISO 100, 35 mm", head: 70 mm x 40 mm, mass: 300 g}
          - {name: willow, guide-number: "32 m @ ISO 100, 35 mm", mass: 300 g}
        uprights: [{name: reed screen, width: 400 mm, height: 400 mm, sheet: {transmittance: 0.5}}]
        site: {ground-reflectance: 0}
        subjects: [{name: round-leaved sundew, group: plants-and-fungi, length: 40 mm}]
        set-ups:
          - name: where it grows
            kind: white-background
            upright: reed screen
            background-distance: 1 cm
            height-over-ground: 18 cm
            ambient: EV 5
            aperture: f/16
            iso: 400
            camera-pitch: 0°
            target-white-margin: 2 stops
            veil-limit: 3 stops
            lights: [{flash: sedge, role: behind, distance: 45 cm}, {flash: willow, role: key, distance: 40 cm}]
        """,
        "kit.yaml",
        PartsLibrary.Embedded));

    private static readonly ExposurePlan Exposure = Close.Exposures.Single();

    [Fact]
    public void The_report_says_which_stems_vanish_and_how_much_each_edge_gets()
    {
        var report = Text();

        report.Should().Contain("Stems between the subject and the sheet").And.Contain("0.5 mm wide vanishes from");
        report.Should().Contain(Wording.StrayStemText.Width(Exposure.StrayStems!.WidestAtSheet)).And.Contain(Wording.EdgeSpillText.Strongest(Exposure.EdgeSpill!));
        foreach (var limb in Exposure.EdgeSpill!.Limbs)
        {
            report.Should().Contain($"{limb.Limb} edge").And.Contain(Wording.EdgeSpillText.Against(limb));
        }
    }

    [Fact]
    public void A_warning_of_eaten_edges_says_what_the_plan_turns_against_it()
    {
        var left = Close.Advice.Against(Exposure, Symptom.EatenEdges)!.Advice!.Promise.EdgeSpill!.Value;

        Wording.WarningText.Of(Exposure, Close.Advice).Should().ContainSingle().Which.Should().Contain("it eats edges (common practice). Against it: ")
            .And.Contain(FormattableString.Invariant($"which leaves {left.Value:+0.0;-0.0}"));
    }

    [Fact]
    public void Edges_and_stems_are_data_in_the_JSON_of_a_plan()
    {
        using var json = System.Text.Json.JsonDocument.Parse(PlanJson.Write(Close));

        var exposure = json.RootElement.GetProperty("exposures").EnumerateArray().Single();
        exposure.GetProperty("edgeSpill").EnumerateArray().Select(limb => limb.GetProperty("edge").GetString()).Should().Equal("left", "right", "upper", "lower");
        exposure.GetProperty("edgeSpill")[0].GetProperty("againstKeyStops").GetDouble().Should().BeApproximately(Exposure.EdgeSpill!.Limbs[0].AgainstKey.Value, 1e-6);
        exposure.GetProperty("strayStems").GetProperty("widestHalfWayMm").GetDouble().Should().BeApproximately(Exposure.StrayStems!.WidestHalfWay.Millimeters, 1e-6);
        exposure.GetProperty("warnings")[0].GetProperty("seen").GetString().Should().Be("eaten-edges");
        exposure.GetProperty("tests")[0].GetString().Should().Be("look-through");
    }

    private static string Text() => string.Join(' ', Paginator.Lay(PlanReport.Make(Close, Pages.Stamp, new PageSetup(Paper.A4))).Document.Pages.SelectMany(Pages.Labels));
}
