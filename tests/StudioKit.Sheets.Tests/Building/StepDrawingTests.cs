using StudioKit.Planning;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Documents.BuildSections;
using StudioKit.Sheets.Drawings;
using StudioKit.Wording;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>The drawings of the steps, told by their own marks.</summary>
public sealed class StepDrawingTests
{
    private static readonly Dictionary<string, Lazy<Plan>> Plans = new()
    {
        ["table"] = new(() => BuiltKit.Table),
        ["swept"] = new(() => BuiltKit.Swept),
        ["three cradles"] = new(() => BuiltKit.ThreeBelow),
        ["refused"] = new(() => BuiltKit.Refused),
        ["low"] = new(() => BuiltKit.Of("kind: low-ground", "skirts: no")),
    };

    public static TheoryData<string> Kits { get; } = [.. Plans.Keys];

    [Theory]
    [MemberData(nameof(Kits))]
    public void Every_part_that_a_step_brings_is_named_in_its_drawing(string kit)
    {
        foreach (var (step, drawing, _) in Drawn(kit).Where(drawn => drawn.Step is not AssemblyStep.MarkPieces))
        {
            var names = drawing.Marks.OfType<Label>().SelectMany(label => label.Text.Split([", ", " "], StringSplitOptions.None)).ToHashSet();
            step.Joints.Concat(step.Members).Where(part => !names.Contains(part)).Should().BeEmpty(drawing.Title);
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void No_name_in_a_steps_drawing_covers_another_or_a_pipe_or_fitting(string kit)
    {
        foreach (var (_, drawing, number) in Drawn(kit))
        {
            var labels = drawing.PlainMarks().OfType<Label>().ToList();
            labels.SelectMany((label, i) => labels.Skip(i + 1).Where(other => Meet(label.Bounds, other.Bounds)).Select(other => $"{number}: {label.Text} and {other.Text}")).Should().BeEmpty();

            // Round bodies are drawn with many corners, sheets and boxes with four; a swept sheet is named where it is.
            var round = drawing.Marks.OfType<Polygon>().Where(mark => mark.Points.Count is > 8 and < 25).ToList();
            labels.SelectMany(label => round.Where(body => Crosses(body, label.Bounds)).Select(_ => $"{number}: {label.Text} on a body")).Distinct().Should().BeEmpty();
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Every_step_fits_beside_its_words_without_being_made_smaller(string kit)
    {
        foreach (var (_, drawing, number) in Drawn(kit))
        {
            drawing.Bounds.Width.Should().BeLessThanOrEqualTo(104.6, $"step {number}: {drawing.Title}");
            drawing.Bounds.Height.Should().BeLessThanOrEqualTo(110, $"step {number}: {drawing.Title}");
        }
    }

    // Its outline is heavy where it comes in, thin where it stood.
    [Fact]
    public void What_stands_is_thin_and_what_comes_in_is_heavy()
    {
        foreach (var (step, drawing, _) in Drawn("table").Where(drawn => drawn.Step.Runs.Count > 0))
        {
            var weights = drawing.Marks.OfType<Polygon>().Where(mark => mark.Points.Count > 8).Select(mark => mark.Stroke!.Value.WidthMm).ToList();
            weights.Count(weight => weight > 0.5).Should().BeGreaterThanOrEqualTo(step.Members.Count);
            weights.Exists(weight => weight < 0.2).Should().BeTrue("caps stand before legs, legs before rails, a side before what goes across");
        }
    }

    [Fact]
    public void A_mistake_is_shown_crossed_out_wherever_a_step_invites_one()
    {
        foreach (var (step, drawing, _) in Drawn("table"))
        {
            var words = step.WrongWays.SelectMany(wrong => AssemblyText.Wrong(wrong).Split(' ')).ToList();
            var printed = drawing.Marks.OfType<Label>().SelectMany(label => label.Text.Split(' ')).ToList();
            words.Where(word => !printed.Contains(word)).Should().BeEmpty(drawing.Title);
            drawing.Marks.OfType<Line>().Count(line => Math.Abs(line.Stroke.WidthMm - 0.5) < 1e-9 && Math.Abs(Math.Abs(line.From.X - line.To.X) - Math.Abs(line.From.Y - line.To.Y)) < 1e-9)
                .Should().Be(2 * step.WrongWays.Count, "two strokes cross each of them out");
        }
    }

    [Theory]
    [MemberData(nameof(Kits))]
    public void Every_step_that_pushes_parts_says_where_front_is(string kit)
    {
        foreach (var (_, drawing, _) in Drawn(kit).Where(drawn => drawn.Step.Runs.Count > 0))
        {
            drawing.Marks.OfType<Label>().Should().ContainSingle(label => label.Text == "front");
        }
    }

    [Fact]
    public void Sockets_that_stay_free_are_told_in_words_with_where_they_point()
    {
        var frame = BuiltKit.ThreeBelow.Frame!;
        foreach (var step in frame.Assembly)
        {
            var text = AssemblyText.Of(step, frame.Geometry);
            step.FreeSockets.Where(socket => !text.Contains(socket.Joint, StringComparison.Ordinal)).Should().BeEmpty();
            (step.FreeSockets.Count > 0).Should().Be(text.Contains("Free sockets", StringComparison.Ordinal));
        }

        frame.Assembly.OfType<AssemblyStep.BuildLegs>().First().FreeSockets.Should().NotBeEmpty();
        AssemblyText.Of(frame.Assembly.OfType<AssemblyStep.PushAcross>().Single(), frame.Geometry).Should().Contain("up (for the flash)");
    }

    [Fact]
    public void Each_step_is_a_file_of_its_own() => BuiltKit.TableFiles.Select(file => file.Name)
        .Should().Contain(Enumerable.Range(1, BuiltKit.Table.Frame!.Assembly.Count).Select(number => $"step-{number}.svg"));

    private static IEnumerable<(AssemblyStep Step, Drawing Drawing, int Number)> Drawn(string kit) => AssemblySection.Drawn(Plans[kit].Value, Plans[kit].Value.Frame!);

    private static bool Meet(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    // Corners of one in the other, or sides that cut.
    private static bool Crosses(Polygon body, Bounds box)
    {
        if (!Meet(body.Bounds, box))
        {
            return false;
        }

        var middle = new Point((box.Left + box.Right) / 2, (box.Top + box.Bottom) / 2);
        var sides = body.Points.Zip(body.Points.Skip(1).Append(body.Points[0])).Select(side => new Line(side.First, side.Second, Stroke.Thin));
        return ClippedLines.Of(sides, box).Count > 0 || Inside(body.Points, middle);
    }

    private static bool Inside(IReadOnlyList<Point> corners, Point at)
    {
        var inside = false;
        for (var (i, k) = (0, corners.Count - 1); i < corners.Count; k = i++)
        {
            if ((corners[i].Y > at.Y) != (corners[k].Y > at.Y) && at.X < ((corners[k].X - corners[i].X) * (at.Y - corners[i].Y) / (corners[k].Y - corners[i].Y)) + corners[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }
}
