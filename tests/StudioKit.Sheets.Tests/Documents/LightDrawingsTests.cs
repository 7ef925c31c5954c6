using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class LightDrawingsTests
{
    private static readonly Plan Studio = KitPlanner.Plan(KitReader.Parse(
        """
        kit: Sallow bog
        camera: {name: body, sensor: 36 mm x 24 mm, mass: 700 g}
        lenses:
          - {name: sallow 60, focal-length: 60 mm, aperture: f/2.8 to f/32, focusing: unit, largest-magnification: 1:1, magnifications: [1:4, 1:1], mass: 300 g}
        flashes:
          - {name: sedge, guide-number: "30 m @ ISO 100, 35 mm", head: 70 mm x 40 mm, mass: 300 g}
          - {name: willow, guide-number: "30 m @ ISO 100, 35 mm", mass: 300 g}
        panel: {width: 400 mm, depth: 300 mm, transmittance: 0.5, skirts: yes}
        frame: {height: 500 mm}
        set-ups:
          - name: white
            kind: white-background
            camera-pitch: [60°, 90°]
            lights:
              - {flash: sedge, role: below, distance: 40 cm, offset-right: 40 mm}
              - {flash: willow, role: above, distance: 40 cm}
        """,
        "kit.yaml",
        PartsLibrary.Embedded));

    private static PanelLightPlan Light => Studio.PanelLights[0];

    /// <summary>Plain sums: 400 mm wide, 40 mm right of the middle; 300 mm deep, in the middle.</summary>
    [Fact]
    public void The_flash_is_dimensioned_from_the_panels_edges()
    {
        var drawing = FlashPlaceDrawing.Of(Light);

        Dimensions(drawing).Should().BeEquivalentTo("240 mm", "160 mm", "150 mm", "150 mm");
        Texts(drawing).Should().Contain(text => text.Contains("400 mm under the panel") && text.Contains("100 mm over the ground"));
    }

    [Fact]
    public void The_map_names_every_framing_and_lies_within_its_sheet()
    {
        var drawing = LightMapDrawing.Of(Light)!;

        foreach (var framing in Light.Framings)
        {
            Texts(drawing).Should().Contain($"seen by {framing.Framing}");
        }

        var sheet = drawing.Marks.OfType<Polygon>().First().Bounds;
        drawing.Marks.OfType<Polyline>().Should().OnlyContain(line => Within(line.Bounds, sheet));
        drawing.Marks.OfType<Polyline>().Should().NotBeEmpty();
        Dimensions(drawing).Should().BeEquivalentTo("400 mm", "300 mm");
    }

    [Theory]
    [InlineData(9)]
    [InlineData(10)]
    [InlineData(240)]
    public void A_map_of_many_framings_draws_no_more_outlines_than_can_be_told_apart(int count)
    {
        var framings = Enumerable.Range(0, count).Select(i => Light.Framings[0] with
        {
            Framing = $"lens {i}",
            Outline = [.. Light.Framings[0].Outline.Select(place => new PanelPlace(place.Across * (1 + (i * 0.7 / count)), place.AlongSheet))],
        }).ToList();
        var outlines = SeenOutlines.Of(framings);

        outlines.Should().HaveCountLessThanOrEqualTo(9);
        outlines.Sum(outline => 1 + outline.Others).Should().Be(count);
        outlines[0].Widest.Should().Be(count > 9 ? framings[^1] : framings[0]);
        Texts(LightMapDrawing.Of(Light with { Framings = framings })!).Count(text => text.StartsWith("seen by", StringComparison.Ordinal)).Should().Be(outlines.Count);
    }

    /// <summary>
    /// An invented map on a panel of 400 × 300 mm: −1 stop along the front edge, rising evenly to +1 along the back. Front at the bottom of the paper,
    /// the clipped half is the upper one; by plain proportion its lower edge lies half-way.
    /// </summary>
    [Fact]
    public void The_front_of_the_panel_is_at_the_bottom_of_the_map()
    {
        const int Columns = 5;
        const int Rows = 7;
        var margins = Enumerable.Range(0, Rows).SelectMany(row => Enumerable.Repeat(-1 + (2.0 * row / (Rows - 1)), Columns)).ToList();
        var grid = new MarginGrid(Columns, Rows, margins, new Stops(1), [new Stops(0)]);
        var light = Light with { Framings = [.. Light.Framings.Select(framing => framing with { Grid = grid, HighestMargin = new Stops(5) })], TargetMargin = new Stops(9) };

        var marks = LightMapDrawing.Of(light)!.Marks;

        var sheet = marks.OfType<Polygon>().First().Bounds;
        var clipped = marks.OfType<Polygon>().Single(mark => mark is { Fill: Fill.LightGrey, Stroke: null } && mark.Bounds.Width > sheet.Width / 2).Bounds;
        clipped.Top.Should().BeApproximately(sheet.Top, 1e-6);
        clipped.Bottom.Should().BeApproximately(sheet.Height / 2, 1e-6);
        var zero = marks.OfType<Polyline>().Single(line => line.Bounds.Width > sheet.Width / 2).Bounds;
        zero.Top.Should().BeApproximately(sheet.Height / 2, 1e-6);
        marks.OfType<Label>().Single(label => label.Text.StartsWith("front", StringComparison.Ordinal)).At.Y.Should().BeGreaterThan(sheet.Bottom);
    }

    /// <summary>The flash stands 240 mm from the left edge and 150 mm from the front one, so its window lies right of the middle on paper.</summary>
    [Fact]
    public void Left_and_right_of_the_map_are_as_the_photographer_sees_them()
    {
        var marks = LightMapDrawing.Of(Light)!.Marks;

        var sheet = marks.OfType<Polygon>().First().Bounds;
        var window = marks.OfType<Polygon>().Single(mark => mark.Stroke == Stroke.Hidden && Math.Abs(mark.Bounds.Width - (sheet.Width * 70 / 400)) < 1e-6).Bounds;
        ((window.Left + window.Right) / 2).Should().BeApproximately(sheet.Width * 240 / 400, 1e-6);
        ((window.Top + window.Bottom) / 2).Should().BeApproximately(sheet.Height / 2, 1e-6);
    }

    [Fact]
    public void Numbers_of_framings_and_contours_do_not_cover_each_other()
    {
        var numbers = LightMapDrawing.Of(Light)!.Marks.OfType<Circle>().Where(circle => Math.Abs(circle.Radius - LightMapLegend.NumberRadius) < 1e-9).ToList();

        numbers.Should().HaveCount(2 * Light.Framings.Count, "each stands on the map and in the legend");
        foreach (var one in numbers)
        {
            numbers.Should().OnlyContain(other => ReferenceEquals(one, other) || one.Centre.DistanceTo(other.Centre) > 2 * LightMapLegend.NumberRadius * 0.99);
        }
    }

    [Fact]
    public void The_section_shows_height_and_distance_and_a_camera_for_every_pitch()
    {
        var drawing = StudioSectionDrawing.Of(Light);

        Dimensions(drawing).Should().Contain(["500 mm", "400 mm"]);
        Texts(drawing).Should().Contain(["60°", "90°"]);
    }

    [Fact]
    public void Light_sheet_and_drawings_are_among_the_sheets()
    {
        var files = SheetSet.Write(Studio, new SheetOptions());

        files.Select(file => file.Name).Should().Contain(["light.pdf", "light-map.svg", "studio-section.svg", "flash-place.svg"]);
        files.Where(file => file.Name is "light.pdf" or "plan-report.pdf").SelectMany(file => file.Problems).Should().BeEmpty();
        using var document = PdfDocument.Open(files.Single(file => file.Name == "light.pdf").Content.ToArray());
        string.Concat(document.GetPages().Select(page => page.Text)).Should().Contain("darkest visible point");
    }

    private static IEnumerable<string> Dimensions(Drawing drawing) => drawing.Marks.OfType<Dimension>().Select(dimension => dimension.Text);

    private static IEnumerable<string> Texts(Drawing drawing) => drawing.Marks.OfType<Label>().Select(label => label.Text);

    private static bool Within(Bounds inner, Bounds outer) =>
        inner.Left >= outer.Left - 1e-6 && inner.Right <= outer.Right + 1e-6 && inner.Top >= outer.Top - 1e-6 && inner.Bottom <= outer.Bottom + 1e-6;
}
