using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Plots;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Plots;

public sealed class PlanPlotsTests
{
    private static readonly IReadOnlyList<DepthCurve> Curves = [.. new[] { 8.0, 16 }.Select(n => new DepthCurve(
        new FNumber(n), [.. new[] { 0.25, 0.5, 1 }.Select(m => new DepthPoint(new Magnification(m), Length.FromMillimeters(n * (1 + m) / (10 * m * m))))]))];

    [Fact]
    public void A_plot_names_its_axes_with_units_and_each_line()
    {
        var texts = DepthPlot.Of(Curves).Marks.OfType<Label>().Select(label => label.Text).ToList();

        texts.Should().Contain(["magnification", "depth of field, mm", "f/8", "f/16", "1:1", "1:2", "1:4"]);
    }

    [Fact]
    public void Lines_of_a_plot_can_be_told_apart_without_colour()
    {
        var lines = DepthPlot.Of(Curves).Marks.OfType<Polyline>().Where(line => line.Points.Count == 3).ToList();

        lines.Select(line => line.Stroke.Style).Distinct().Should().HaveCount(2);
    }

    // On doubling axes a power law is straight: with N_e = N·(1 + m) left out, twice the f-number lies one step of the axis higher all along.
    [Fact]
    public void Twice_the_f_number_lies_one_doubling_higher_everywhere()
    {
        var lines = DepthPlot.Of(Curves).Marks.OfType<Polyline>().Where(line => line.Points.Count == 3).ToList();
        var steps = lines[0].Points.Zip(lines[1].Points, (eight, sixteen) => eight.Y - sixteen.Y).ToList();

        steps.Should().OnlyContain(step => Math.Abs(step - steps[0]) < 1e-6 && step > 1);
    }

    [Fact]
    public void No_mark_leaves_the_sheet_and_no_two_texts_overlap()
    {
        var drawing = DepthPlot.Of(Curves);
        var labels = drawing.Marks.OfType<Label>().ToList();

        drawing.Bounds.Width.Should().BeLessThan(165);
        drawing.Bounds.Height.Should().BeLessThan(100);
        foreach (var (label, place) in labels.Select((label, place) => (label, place)))
        {
            labels.Skip(place + 1).Where(other => Overlap(label.Bounds, other.Bounds)).Select(other => $"{label.Text} on {other.Text}").Should().BeEmpty();
        }
    }

    [Fact]
    public void A_sharpness_plot_marks_the_best_f_number()
    {
        var curve = new SharpnessCurve(
            "moth",
            Length.FromMillimeters(5),
            [.. new[] { 4.0, 8, 16 }.Select(n => new ApertureBlur(new FNumber(n), Length.FromMicrometers(400 / n), Length.FromMicrometers(4 * n), Length.FromMicrometers(380 / n)))],
            new FNumber(16),
            new FNumber(8));

        SharpnessPlot.Of(SamplePlan.Plan.Framings[0], curve).Marks.OfType<Label>().Select(label => label.Text)
            .Should().Contain(["sharpest: f/16", "set: f/8", "blur at the subject, µm"]);
    }

    private static bool Overlap(Bounds a, Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}
