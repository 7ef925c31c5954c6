using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests.Building;

public sealed class BuildSheetTests
{

    public static TheoryData<string> Shapes { get; } = ["table", "swept-table"];

    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_piece_and_fitting_is_labelled_once_in_the_exploded_view(string shape)
    {
        var frame = PlanOf(shape).Frame!;

        var labels = ExplodedDrawing.Of(frame).Marks.OfType<Label>().Select(label => label.Text).Where(text => text != "front");

        labels.Should().BeEquivalentTo(frame.Geometry.Members.Select(member => member.Label).Concat(frame.Geometry.Joints.Select(joint => joint.Label)));
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void No_label_of_the_exploded_view_covers_another(string shape)
    {
        var labels = ExplodedDrawing.Of(PlanOf(shape).Frame!).Marks.OfType<Label>().ToList();

        var covered = labels.SelectMany((label, i) => labels.Skip(i + 1).Where(other => Covers(label.Bounds, other.Bounds)).Select(other => $"{label.Text} and {other.Text}"));

        covered.Should().BeEmpty();
    }

    /// <summary>The drawn length over the scale is the length that the text says, to half of the half millimetre that it is told to.</summary>
    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_measure_of_a_view_is_as_long_as_it_says(string shape)
    {
        var plan = PlanOf(shape);
        foreach (var view in BuildDrawings.Views(plan, plan.Frame!))
        {
            var reduction = double.Parse(view.Drawing.Title.Split("1:")[1], System.Globalization.CultureInfo.InvariantCulture);
            foreach (var dimension in view.Drawing.Marks.OfType<Dimension>())
            {
                var said = double.Parse(dimension.Text.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
                (dimension.From.DistanceTo(dimension.To) * reduction).Should().BeApproximately(said, 0.2501, $"{view.Drawing.Title}: {dimension.Text}");
            }
        }
    }

    /// <summary>A height stands where its own line begins: at the drawn height over the ground, whatever its text was pushed up by.</summary>
    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_height_beside_the_front_view_begins_where_it_lies(string shape)
    {
        var plan = PlanOf(shape);
        var drawing = BuildDrawings.Views(plan, plan.Frame!).Single(view => view.Name == "frame-front").Drawing;
        var reduction = double.Parse(drawing.Title.Split("1:")[1], System.Globalization.CultureInfo.InvariantCulture);
        var told = drawing.Marks.OfType<Label>().Where(label => label.Anchor == TextAnchor.End && label.Text.EndsWith("mm", StringComparison.Ordinal)).ToList();
        var lines = drawing.Marks.OfType<Line>().Where(line => line.Stroke == Stroke.Thin).ToList();

        told.Should().HaveCount(plan.Frame!.Heights.Count);
        foreach (var label in told)
        {
            var slanting = lines.Single(line => Math.Abs(line.To.Y - label.At.Y) < 1e-9 && Math.Abs(line.To.X - label.At.X - 1) < 1e-9);
            var said = double.Parse(label.Text.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture);
            (-slanting.From.Y * reduction).Should().BeApproximately(said, 0.251, label.Text);
        }

        // Every rail's height by its joints, and no two texts on each other.
        var rails = plan.Frame.Geometry.Members.Select(member => (Member: member, Up: plan.Frame.Geometry.Joints.Single(joint => joint.Label == member.From).Position.Up))
            .Where(rail => rail.Member.Role is Physics.Structure.Frames.FrameMemberRole.CrossRail or Physics.Structure.Frames.FrameMemberRole.SideRail or Physics.Structure.Frames.FrameMemberRole.Stretcher or Physics.Structure.Frames.FrameMemberRole.CradleRail or Physics.Structure.Frames.FrameMemberRole.SweepRail);
        rails.Should().OnlyContain(rail => plan.Frame.Heights.Any(height => Math.Abs(height.Height.Meters - rail.Up) < 1e-4 && height.Parts.Contains(rail.Member.Label)));
        told.Zip(told.Skip(1)).Should().OnlyContain(pair => !Covers(pair.First.Bounds, pair.Second.Bounds));
    }

    /// <summary>Pieces behind each other are named together; of pieces that are seen end on, the legs are named from above.</summary>
    [Theory]
    [MemberData(nameof(Shapes))]
    public void No_piece_is_without_its_name_in_the_views(string shape)
    {
        var plan = PlanOf(shape);
        var views = BuildDrawings.Views(plan, plan.Frame!).Select(view => Names(view.Drawing)).ToList();

        foreach (var member in plan.Frame!.Geometry.Members)
        {
            views.Count(names => names.Contains(member.Label)).Should().BeGreaterThanOrEqualTo(2, member.Label);
        }

        static HashSet<string> Names(Drawing drawing) => [.. drawing.Marks.OfType<Label>().SelectMany(label => label.Text.Split(", "))];
    }

    [Fact]
    public void The_plan_view_measures_the_panel_and_the_flash_from_its_edges()
    {
        var drawing = BuildDrawings.Views(BuiltKit.Table, BuiltKit.Table.Frame!).First().Drawing;

        // Panel 600 × 700 mm; the flash stands 20 mm right of the middle.
        drawing.Marks.OfType<Dimension>().Select(dimension => dimension.Text).Should().Contain(["600 mm", "700 mm", "320 mm", "350 mm"]);
    }

    /// <summary>Windows 300, 200 and 420 mm under a panel 500 mm up, 20 mm right, 50 mm left and in the middle of 600 mm, in the middle and 80 mm behind it of 700 mm.</summary>
    [Fact]
    public void Every_flash_below_is_drawn_measured_and_said_to_be_held()
    {
        var plan = BuiltKit.ThreeBelow;
        var views = BuildDrawings.Views(plan, plan.Frame!).ToDictionary(view => view.Name, view => view.Drawing);

        Texts(views["frame-plan"]).Should().Contain(["320 mm", "250 mm", "300 mm", "350 mm", "430 mm"]);
        Texts(views["frame-front"]).Should().Contain(["300 mm, window to panel", "200 mm, window to panel", "420 mm, window to panel"]);
        views["frame-front"].Marks.OfType<Label>().Select(label => label.Text).Should().Contain(["rail with the flash 140 mm", "rail with the flash 240 mm", "flash window 200 mm", "flash window 300 mm", "flash window 80 mm", "panel, underside 500 mm"]);
        views["frame-plan"].Marks.OfType<Label>().Select(label => label.Text).Should().Contain(["flash sedge, white", "flash willow, pale", "flash willow, soft"]);
        foreach (var view in views.Values)
        {
            view.Marks.OfType<Dimension>().Select(dimension => (dimension.Offset, dimension.From, dimension.To)).Should().OnlyHaveUniqueItems();
            var labels = view.Marks.OfType<Label>().ToList();
            labels.SelectMany((label, i) => labels.Skip(i + 1).Where(other => Covers(label.Bounds, other.Bounds)).Select(other => $"{label.Text} and {other.Text}")).Should().BeEmpty();
        }

        var file = SheetSet.Write(plan, new SheetOptions()).Single(file => file.Name == "build-sheet.pdf");
        using var document = PdfDocument.Open(file.Content.ToArray());
        var text = string.Join(' ', document.GetPages().Select(page => page.Text));
        text.Should().Contain("What holds the flashes below").And.Contain($"its cradle, {plan.Frame!.LowerFlashes[0].CradleJoint}")
            .And.Contain($"its cradle, {plan.Frame.LowerFlashes[1].CradleJoint}").And.Contain("the ground");

        static IEnumerable<string> Texts(Drawing drawing) => drawing.Marks.OfType<Dimension>().Select(dimension => dimension.Text);
    }

    /// <summary>Drawing practice: the shortest measure lies nearest to the view, so that no measure's ends cross another's figures.</summary>
    [Fact]
    public void Upright_measures_of_the_front_view_grow_outwards()
    {
        var plan = BuiltKit.ThreeBelow;
        var view = BuildDrawings.Views(plan, plan.Frame!).Single(view => view.Name == "frame-front").Drawing;
        var sides = view.Marks.OfType<Dimension>().Where(measure => Math.Abs(measure.From.X - measure.To.X) < 1e-9).GroupBy(measure => measure.From.X > 0).ToList();

        sides.Should().ContainSingle().Which.Should().HaveCount(3);
        foreach (var side in sides)
        {
            var outwards = side.OrderBy(measure => Math.Abs(measure.Offset)).Select(measure => measure.From.DistanceTo(measure.To)).ToList();
            outwards.Should().BeInAscendingOrder();
        }
    }

    [Fact]
    public void Flashes_over_each_other_are_measured_once_from_the_panels_edges()
    {
        var plan = BuiltKit.OverEachOther;
        var view = BuildDrawings.Views(plan, plan.Frame!).Single(view => view.Name == "frame-plan").Drawing;

        var texts = view.Marks.OfType<Dimension>().Select(measure => measure.Text).ToList();
        texts.Where(text => text == "320 mm").Should().ContainSingle();
        texts.Where(text => text == "350 mm").Should().ContainSingle();
    }

    [Fact]
    public void A_frame_that_does_not_carry_every_flash_is_not_said_to_be_impossible()
    {
        var plan = BuiltKit.Refused;
        var text = TextOf(SheetSet.Write(plan, new SheetOptions()).Single(file => file.Name == "build-sheet.pdf"));

        text.Should().Contain("This frame does not carry every flash").And.NotContain("can't be built")
            .And.Contain("a stand of its own: it would lie").And.Contain("too near the rail of another flash");
        plan.Frame!.Assembly.Should().Contain(step => AssemblyText.Of(step, plan.Frame.Geometry).Contains("on a stand of its own", StringComparison.Ordinal));

        static string TextOf(SheetFile file)
        {
            using var document = PdfDocument.Open(file.Content.ToArray());
            return string.Join(' ', document.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text))));
        }
    }

    [Fact]
    public void The_check_square_is_100_mm_in_the_pdf()
    {
        var file = BuiltKit.TableFiles.Single(file => file.Name == "templates.pdf");
        file.Problems.Should().BeEmpty();
        using var document = PdfDocument.Open(file.Content.ToArray());
        var page = document.GetPages().Single(page => page.Text.Contains("100 mm by 100 mm", StringComparison.Ordinal));

        var boxes = page.Paths.Select(path => path.GetBoundingRectangle()).OfType<UglyToad.PdfPig.Core.PdfRectangle>()
            .Select(box => (Width: box.Width * TextMeter.MillimetresPerPoint, Height: box.Height * TextMeter.MillimetresPerPoint));

        // A PDF keeps three decimals of a point: 0.0004 mm.
        boxes.Should().ContainSingle(box => Math.Abs(box.Width - 100) < 0.005 && Math.Abs(box.Height - 100) < 0.005);
    }

    /// <summary>Worked by hand: the flap edges of a fold must be as long as the neighbouring side's cut edge they are glued to.</summary>
    [Fact]
    public void Glued_edges_of_the_softbox_are_equally_long()
    {
        var box = BuiltKit.Table.Frame!.Softboxes.Single();
        var slanting = SoftboxPattern.Of(box).Marks.OfType<Line>()
            .Where(line => Math.Abs(line.From.X - line.To.X) > 1 && Math.Abs(line.From.Y - line.To.Y) > 1)
            .Select(line => line.From.DistanceTo(line.To))
            .Where(length => length > 100);

        // Four sides with two slanting edges each; a corner of the opening's cross is shorter than 100 mm.
        slanting.Should().HaveCount(8).And.OnlyContain(length => Math.Abs(length - box.Seam.Millimeters) < 1e-9);
    }

    /// <summary>25.4 mm to the inch by definition; sixteenths worked by hand.</summary>
    [Theory]
    [InlineData(25.4, "1 in")]
    [InlineData(12.7, "1/2 in")]
    [InlineData(546, "21 1/2 in")]
    [InlineData(1.5875, "1/16 in")]
    [InlineData(304.8, "12 in")]
    [InlineData(100, "3 15/16 in")]
    public void Inches_are_read_to_the_nearest_sixteenth(double millimetres, string expected) =>
        InchText.ByRule(millimetres).Should().Be(expected);

    [Fact]
    public void Inches_stand_beside_millimetres_on_request()
    {
        using var document = Pages.Read(new PlanUnits(TextUnits.Both, WrittenLengths.None).Tell(() => Built(BuiltKit.Swept)).Document);

        // 500 mm are 19.685 in, nearest 19 11/16.
        document.GetPages().Select(page => page.Text).Should().Contain(text => text.Contains("500 mm (19 11/16 in)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_long_name_leaves_nothing_out()
    {
        var plan = BuiltKit.Table with { Kit = BuiltKit.Table.Kit with { Name = "The very long name of a kit that somebody wrote on a rainy evening" } };

        Built(plan).Problems.Should().BeEmpty();
    }

    [Theory]
    [MemberData(nameof(Shapes))]
    public void A_check_is_printed_with_what_it_takes_for_given(string shape)
    {
        var plan = PlanOf(shape);
        var text = string.Join(' ', Paginator.Lay(PlanReport.Make(plan, Pages.Stamp, new PageSetup(Paper.A4))).Document.Pages.SelectMany(Pages.Labels));

        text.Should().Contain("gust factor").And.Contain("subject in its box").And.Contain("an elbow's push").And.Contain("warmed by the sun");
        plan.Checks.Where(check => check.Loads.Count > 0).Should().HaveCountGreaterThan(8);
    }

    /// <summary>A strip lies between the outlines of the pipe that carries it, at the scale of the drawing.</summary>
    [Theory]
    [MemberData(nameof(Shapes))]
    public void Every_strip_under_the_panel_is_drawn_from_above(string shape)
    {
        var plan = PlanOf(shape);
        var drawing = BuildDrawings.Views(plan, plan.Frame!).First().Drawing;
        var reduction = double.Parse(drawing.Title.Split("1:")[1], System.Globalization.CultureInfo.InvariantCulture);

        var drawn = drawing.Marks.OfType<Polygon>().Where(mark => mark.Fill == Fill.Grey).Select(mark => Math.Max(mark.Bounds.Width, mark.Bounds.Height) * reduction).Order().ToList();

        drawn.Should().HaveCount(plan.Frame!.Geometry.Ledge.Rests.Count);
        drawn.Zip(plan.Frame.Geometry.Ledge.Rests.Select(rest => rest.Length.Millimeters).Order()).Should().OnlyContain(pair => Math.Abs(pair.First - pair.Second) < 0.01);
    }

    [Fact]
    public void Tables_of_cuts_and_shopping_have_a_row_for_every_piece_and_line()
    {
        var frame = BuiltKit.Table.Frame!;
        var files = BuiltKit.TableFiles.Where(file => file.Name.EndsWith(".csv", StringComparison.Ordinal))
            .ToDictionary(file => file.Name, file => Rows(System.Text.Encoding.UTF8.GetString(file.Content.Span)));

        files["pipe-cuts.csv"].Should().HaveCount(1 + frame.Geometry.Members.Count);
        files["shopping.csv"].Should().HaveCount(1 + frame.Shopping.Count);
        files["sheet-cuts.csv"].Should().HaveCount(1 + frame.SheetParts.Sum(part => part.Count));
    }

    private static LaidDocument Built(Plan plan) => Paginator.Lay(BuildSheet.Make(
        plan, plan.Frame!, new Stamp(plan.Kit.Name, plan.ContentHash, new DateOnly(2026, 5, 17)), new PageSetup(Paper.A4)));

    private static string[] Rows(string text) => text.Split(["\r\n", "\n"], StringSplitOptions.RemoveEmptyEntries);

    private static Plan PlanOf(string shape) => shape == "table" ? BuiltKit.Table : BuiltKit.Swept;

    private static bool Covers(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
