using StudioKit.Planning;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Drawings;
using StudioKit.Wording;

namespace StudioKit.Sheets.Tests.Building;

public sealed class TemplatesTests
{
    /// <summary>Common practice, as the sheets are cut for it: 20 mm of hem at either side, 50 mm round the rail.</summary>
    [Fact]
    public void A_skirt_is_folded_20_mm_in_at_its_side_and_50_mm_down_at_its_top()
    {
        var folds = Templates.SkirtCorner(BuiltKit.Table.Frame!)!.Marks.OfType<Line>().Where(line => line.Stroke == Stroke.Hidden).ToList();

        folds.Should().HaveCount(2);
        folds.Should().ContainSingle(fold => fold.From.X == 20 && fold.To.X == 20, "the side hem is sewn along an upright fold");
        folds.Should().ContainSingle(fold => fold.From.Y == 50 && fold.To.Y == 50, "the fold round the rail is level");
    }

    /// <summary>Half of the depth to which the shallowest pinned socket takes the pipe, so that the hole has as much pipe before it as behind it.</summary>
    [Fact]
    public void A_pin_goes_halfway_into_the_shallowest_socket_that_has_one_on_the_template_as_in_its_step()
    {
        var frame = BuiltKit.Table.Frame!;
        var shallowest = frame.Geometry.Joints.Where(joint => joint.Pinned).Min(joint => frame.InsertionDepths[joint.Kind].Millimeters);
        var step = frame.Assembly.OfType<AssemblyStep.PinJoints>().Single();

        var hole = Templates.PinHole(frame)!.Marks.OfType<Circle>().Single();

        (-hole.Centre.Y).Should().BeApproximately(shallowest / 2, 0.5).And.Be(step.Hole.FromMouth.Millimeters);
        (2 * hole.Radius).Should().Be(step.Hole.Width.Millimeters);
        AssemblyText.Of(step, frame.Geometry).Should().Contain("drill").And.Contain("burrs").And.Contain(CutFormat.CutLength(step.Hole.FromMouth));
    }

    /// <summary>A line on paper that is turned over along an axis lies where its mirror image is.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Half_a_softbox_traced_and_turned_over_along_its_fold_is_the_whole(bool upright)
    {
        var box = BuiltKit.Table.Frame!.Softboxes.Single();
        var whole = SoftboxPattern.Of(box);
        var wholeLines = ClippedLines.Of(whole.Marks, whole.Bounds.Grown(1));
        var half = SoftboxPattern.Half(box, upright);
        var fold = half.Marks.OfType<Line>().Single(line => line.Stroke == Stroke.Centre);
        var traced = half.Marks.OfType<Line>().Where(line => line.Stroke == Stroke.Edge || line.Stroke == Stroke.Hidden).ToList();
        List<Line> both = [.. traced, .. traced.Select(line => line with { From = Turned(line.From), To = Turned(line.To) })];

        foreach (var line in wholeLines)
        {
            Enumerable.Range(0, 21).Select(i => new Point(line.From.X + (i / 20.0 * (line.To.X - line.From.X)), line.From.Y + (i / 20.0 * (line.To.Y - line.From.Y))))
                .Should().OnlyContain(point => both.Exists(one => one.Stroke == line.Stroke && one.From.DistanceTo(point) + point.DistanceTo(one.To) - one.From.DistanceTo(one.To) < 1e-6));
        }

        // Each line of the half that lies off the fold stands for two of the whole, and nothing is added.
        traced.Where(line => !OnFold(line)).Sum(Long).Should().BeApproximately(wholeLines.Where(line => !OnFold(line)).Sum(Long) / 2, 1e-6);
        Long(fold).Should().BeApproximately(upright ? whole.Marks.OfType<Polyline>().SelectMany(line => line.Points).Max(point => point.Y) * 2 : whole.Marks.OfType<Polyline>().SelectMany(line => line.Points).Max(point => point.X) * 2, 1e-6);
        SoftboxPattern.Fold(box, upright).Millimeters.Should().BeApproximately(Long(fold), 1e-9);

        Point Turned(Point point) => upright ? new Point(-point.X, point.Y) : new Point(point.X, -point.Y);

        bool OnFold(Line line) => upright ? Math.Abs(line.From.X) + Math.Abs(line.To.X) < 1e-9 : Math.Abs(line.From.Y) + Math.Abs(line.To.Y) < 1e-9;
    }

    [Fact]
    public void An_insertion_mark_lies_its_depth_from_the_edge_that_goes_to_the_pipes_end()
    {
        var frame = BuiltKit.Table.Frame!;

        var marks = Templates.InsertionGauge(frame).Marks;

        var end = marks.OfType<Label>().Single(label => label.Text.StartsWith("end of the pipe", StringComparison.Ordinal)).At.Y;
        var lines = marks.OfType<Line>().Where(line => line.Stroke == Stroke.Heavy).Select(line => line.From.Y).ToList();
        var depths = frame.Fittings.Select(fitting => frame.InsertionDepths[fitting.Kind].Millimeters).Distinct();
        lines.Should().HaveSameCount(depths);
        depths.Should().OnlyContain(depth => lines.Exists(line => Math.Abs(line - depth) < 0.01));
        marks.OfType<Polygon>().First().Bounds.Top.Should().Be(0);
        end.Should().BeLessThan(lines.Min(), "the words stand at the edge that the depths count from");
    }

    /// <summary>Take-off and gap end where the pipe does, and the fitting's edge lies take-off, gap and insertion from its middle.</summary>
    [Fact]
    public void A_joint_names_take_off_gap_and_insertion_once_each_and_they_add_up()
    {
        var frame = BuiltKit.Table.Frame!;
        foreach (var fitting in frame.Fittings)
        {
            var wide = fitting with { ToPipeEnd = fitting.TakeOff + UnitsNet.Length.FromMillimeters(1), ToMark = fitting.ToMark + UnitsNet.Length.FromMillimeters(1) };
            var measures = JointDrawing.Of(frame, wide).Marks.OfType<Dimension>().ToDictionary(measure => measure.Text.Split(' ')[0]);

            measures.Values.Should().OnlyContain(measure => measure.Text.Contains(CutFormat.CutLength(UnitsNet.Length.FromMillimeters(measure.From.DistanceTo(measure.To))), StringComparison.Ordinal));
            measures["gap"].From.DistanceTo(measures["gap"].To).Should().BeApproximately(1, 1e-9);
            measures["pushed"].From.X.Should().BeApproximately(measures["gap"].To.X, 1e-9);
            measures["pushed"].To.X.Should().BeApproximately(wide.ToMark.Millimeters, 1e-9);
            if (fitting.TakeOff > UnitsNet.Length.FromMillimeters(0.1))
            {
                measures["take-off"].From.X.Should().Be(0);
                measures["take-off"].To.X.Should().BeApproximately(measures["gap"].From.X, 1e-9);
            }
        }
    }

    /// <summary>Strips of equal length laid end to end are the panel's edge.</summary>
    [Fact]
    public void Strips_laid_end_to_end_have_every_clip_in_its_place()
    {
        var (frame, panel) = (BuiltKit.Table.Frame!, BuiltKit.Table.Panel);
        var marks = Templates.ClipStrip(frame, panel).Marks;
        var strips = marks.OfType<Polygon>().Select(strip => strip.Bounds).OrderBy(strip => strip.Top).ToList();

        var places = marks.OfType<Circle>().Select(clip =>
        {
            var strip = strips.FindIndex(strip => clip.Centre.Y > strip.Top && clip.Centre.Y < strip.Bottom);
            return strips.Take(strip).Sum(before => before.Width) + clip.Centre.X;
        });

        strips.Sum(strip => strip.Width).Should().BeApproximately(panel.Width.Millimeters, 1e-9);
        places.Order().Zip(frame.FrontClips).Should().OnlyContain(pair => Math.Abs(pair.First - pair.Second.FromLeft.Millimeters) < 1e-9).And.HaveCount(frame.FrontClips.Count);
    }

    /// <summary>Closed form: an arc of radius r and length s turns through s/r, spans a chord of 2·r·sin(s/2r) and rises r·(1 − cos(s/r)).</summary>
    [Fact]
    public void The_sweep_of_the_sheet_runs_along_an_arc_from_the_flat_to_its_upper_edge()
    {
        var (frame, panel) = (BuiltKit.Swept.Frame!, BuiltKit.Swept.Panel);
        var sweep = frame.Sweep!;
        var (radius, arc) = (panel.SweepRadius!.Value.Meters, (frame.Geometry.SheetLength - panel.FlatDepth).Meters);

        var (first, last) = (sweep.Profile[0], sweep.Profile[^1]);

        first.Back.Should().BeApproximately(panel.FlatDepth.Meters / 2, 1e-12);
        first.Up.Should().BeApproximately(frame.Geometry.PanelHeight.Meters, 1e-12);
        (last - first).Norm.Should().BeApproximately(2 * radius * Math.Sin(arc / 2 / radius), 1e-9);
        (last.Up - first.Up).Should().BeApproximately(radius * (1 - Math.Cos(arc / radius)), 1e-9);
        sweep.Angle.Radians.Should().BeApproximately(arc / radius, 1e-12);
    }

    private static double Long(Line line) => line.From.DistanceTo(line.To);
}
