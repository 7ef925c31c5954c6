using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Json;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>A plan with measured light distributions names their files and how wide their beams are.</summary>
public sealed class MeasuredBeamsTests
{
    // Invented: half of the axial light at 30° across and at 20° along.
    private static readonly Plan Measured = KitPlanner.Plan(KitReader.Parse(
        """
        kit: Sallow bog
        camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400}
        lenses: [{name: sallow 60, focal-length: 60 mm, magnifications: [1:2]}]
        flashes: [{name: willow, guide-number: "30 m @ ISO 100, 35 mm", light-distribution: sedge.ies}]
        set-ups: [{name: dusk, kind: low-light-fill, ambient: EV 8.5, lights: [{flash: willow, role: fill, distance: 2 m}]}]
        """,
        "kit.yaml",
        PartsLibrary.FromTexts(new Dictionary<string, string>
        {
            ["light-distributions/sedge"] = "TILT=NONE\n1 -1 1 4 2 1 2 0.07 0.04 0\n1 1 50\n0 20 30 90\n0 90\n400 300 200 0\n400 200 100 0\n",
        })));

    [Fact]
    public void The_report_names_the_file_its_beam_at_half_intensity_and_what_is_taken_of_it() => Text(PlanReport.Make(Measured, Pages.Stamp, new PageSetup(Paper.A4)))
        .Should().Contain("sedge.ies").And.Contain("60°").And.Contain("40°").And.Contain("as measured").And.Contain("Only the shape of a beam is taken");

    [Fact]
    public void Machines_are_told_the_same() => PlanJson.Write(Measured).Should().Contain("\"lightDistribution\": \"sedge.ies\"").And.Contain("\"beamWidthDeg\": 60").And.Contain("\"beamHeightDeg\": 40");

    private static string Text(SheetDocument sheet) => string.Join(' ', Paginator.Lay(sheet).Document.Pages.SelectMany(Pages.Labels));
}
