using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>Holders that are built: drawn with what their pieces are cut to, and put together step by step.</summary>
public sealed class HolderDrawingTests
{
    private static readonly BuiltHolder Stand = new("reed stand", 2, Length.FromMillimeters(550), 1, Length.FromMillimeters(300), OnPeg: true);
    private static readonly BuiltHolder Arm = new("long arm", 0, Length.Zero, 2, Length.FromMillimeters(275), OnPeg: false);

    [Fact]
    public void A_stand_is_drawn_as_high_as_its_pieces_with_a_piece_of_several_and_the_whole_measured() =>
        Measured(Stand).Should().BeEquivalentTo([(550.0, "550 mm"), (1100.0, "1100 mm"), (300.0, "300 mm")]);

    [Fact]
    public void An_arm_has_no_pole_to_measure() => Measured(Arm).Should().BeEquivalentTo([(275.0, "275 mm"), (550.0, "550 mm")]);

    // Cut pieces are white outlines, fittings grey; every coupling, tee and clip that is bought stands somewhere.
    [Fact]
    public void Every_piece_and_fitting_of_the_lists_is_drawn()
    {
        foreach (var holder in new[] { Stand, Arm })
        {
            var shapes = HolderDrawing.Of(holder, Length.FromMillimeters(25)).Marks.OfType<Polygon>().ToList();

            shapes.Count(shape => shape.Fill == Fill.White).Should().Be(holder.Poles + holder.Arms);
            shapes.Count(shape => shape.Fill == Fill.LightGrey).Should().Be(holder.Couplings + holder.Tees);
            shapes.Count(shape => shape.Fill == Fill.Black).Should().Be(holder.Clips);
        }
    }

    [Fact]
    public void Steps_follow_from_what_is_built()
    {
        Words(Stand).Should().HaveCount(4).And.Contain(step => step.Contains("peg", StringComparison.Ordinal)).And.Contain(step => step.Contains("tee", StringComparison.Ordinal));
        Words(Arm).Should().HaveCount(3).And.Contain(step => step.Contains("both clips", StringComparison.Ordinal)).And.NotContain(step => step.Contains("peg", StringComparison.Ordinal));

        static IEnumerable<string> Words(BuiltHolder holder) => holder.Assembly.Select(step => HolderText.Of(step, holder));
    }

    // Every shape of the whole comes in with one step, heavy there and thin in those after it.
    [Fact]
    public void Steps_of_a_holder_bring_every_piece_of_it_once()
    {
        foreach (var holder in new[] { Stand, Arm })
        {
            var whole = HolderDrawing.Of(holder, Length.FromMillimeters(25)).Marks.OfType<Polygon>().Count();
            var steps = holder.Assembly.Select(step => HolderDrawing.Step(holder, Length.FromMillimeters(25), step).Marks.OfType<Polygon>().ToList()).ToList();

            steps.Sum(marks => marks.Count(mark => mark.Stroke!.Value.WidthMm > 0.5)).Should().Be(whole);
            steps[^1].Should().HaveCount(whole);
        }
    }

    [Fact]
    public void The_build_sheet_has_both()
    {
        var plan = KitPlanner.Plan(KitReader.Parse(
            """
            kit: Sallow bog
            camera: {name: body, sensor: 36 mm x 24 mm, iso: 100 to 6400}
            lenses: [{name: sallow 60, focal-length: 60 mm, magnifications: [1:2]}]
            flashes: [{name: sedge, guide-number: "30 m @ ISO 100, 35 mm"}]
            holders: [{name: long arm, kind: arm, reach: 55 cm, built: yes}]
            panel: {width: 400 mm, depth: 300 mm}
            site: {ground-reflectance: 0}
            set-ups: [{name: white, kind: white-background, camera-pitch: 90°, lights: [{flash: sedge, role: below, distance: 40 cm}]}]
            """,
            "kit.yaml",
            PartsLibrary.Embedded));

        var text = string.Join(' ', Paginator.Lay(BuildSheet.Make(plan, plan.Frame!, Pages.Stamp, new PageSetup(Paper.A4))).Document.Pages.SelectMany(Pages.Labels));

        text.Should().Contain("Holders of the lights").And.Contain("Holder: long arm").And.Contain("both clips");
        BuildDrawings.Of(plan, plan.Frame!).Select(drawing => drawing.Name).Should().Contain("holder-1");
    }

    private static IEnumerable<(double Drawn, string Text)> Measured(BuiltHolder holder) => HolderDrawing.Of(holder, Length.FromMillimeters(25)).Marks
        .OfType<Dimension>().Select(dimension => (Math.Round(dimension.From.DistanceTo(dimension.To), 6), dimension.Text));
}
