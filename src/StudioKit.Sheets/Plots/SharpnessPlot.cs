using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Framing;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Plots;

/// <summary>Blur of a subject against the f-number, with the sharpest marked.</summary>
internal static class SharpnessPlot
{
    private const double StopsPerDoubling = 2;
    private const double OneMicrometre = 1;

    // Of a mark's text, in doublings from the edge and in plot units from its line.
    private const double FromEdge = 0.2;
    private const double FromLine = 7;

    public static Drawing Of(FramingPlan framing, SharpnessCurve curve)
    {
        var model = PlotDrawing.Empty();
        model.Axes.Add(DoublingAxis.Of(
            AxisPosition.Bottom, "f-number set on the lens", [.. curve.Points.Select(point => point.Aperture.Value)], 1, StopsPerDoubling,
            value => new FNumber(value).Nominal));
        double[] all = [.. curve.Points.SelectMany(point => new[] { point.Nearest.Micrometers, point.Middle.Micrometers, point.Farthest.Micrometers })];
        model.Axes.Add(DoublingAxis.Of(AxisPosition.Left, "blur at the subject, µm", all, OneMicrometre, 1, MeasureFormat.ThreeDigits));
        Add(model, "nearest point", 0, curve, point => point.Nearest.Micrometers);
        Add(model, "farthest point", 1, curve, point => point.Farthest.Micrometers);
        Add(model, "plane in focus", 2, curve, point => point.Middle.Micrometers);
        var chosenIsBest = curve.Chosen.Nominal == curve.Best.Nominal;
        Rule(model, curve.Chosen, OxyPlot.LineStyle.Dash);
        Rule(model, curve.Best, OxyPlot.LineStyle.Solid);
        Write(model, curve, curve.Best, chosenIsBest ? $"sharpest, and set: {curve.Best.Nominal}" : $"sharpest: {curve.Best.Nominal}", model.Axes[1].Maximum - FromEdge);
        if (!chosenIsBest)
        {
            Write(model, curve, curve.Chosen, $"set: {curve.Chosen.Nominal}", model.Axes[1].Minimum + FromEdge);
        }

        return PlotDrawing.Of(
            model,
            $"Sharpness, {framing.Name}",
            $"Blur over {PlanFormat.Millimetres(curve.Depth)} of depth ({curve.Subject}) against the f-number; sharpest at {curve.Best.Nominal}.");
    }

    private static void Add(PlotModel model, string title, int place, SharpnessCurve curve, Func<ApertureBlur, double> micrometres)
    {
        var line = PlotDrawing.Line(title, place);
        line.Points.AddRange(curve.Points.Select(point => new DataPoint(
            Across(point.Aperture), DoublingAxis.Place(micrometres(point), OneMicrometre, 1))));
        model.Series.Add(line);
    }

    private static void Rule(PlotModel model, FNumber aperture, OxyPlot.LineStyle style) => model.Annotations.Add(new LineAnnotation
    {
        Type = LineAnnotationType.Vertical,
        X = Across(aperture),
        Color = OxyColors.Black,
        StrokeThickness = 1,
        LineStyle = style,
    });

    private static void Write(PlotModel model, SharpnessCurve curve, FNumber aperture, string text, double height)
    {
        // Towards the middle of the plot there is always room for the text.
        var toTheRight = aperture.Value * aperture.Value < curve.Points[0].Aperture.Value * curve.Points[^1].Aperture.Value;
        model.Annotations.Add(new TextAnnotation
        {
            Text = text,
            TextPosition = new DataPoint(Across(aperture), height),
            Offset = new ScreenVector(toTheRight ? FromLine : -FromLine, 0),
            TextHorizontalAlignment = toTheRight ? OxyPlot.HorizontalAlignment.Left : OxyPlot.HorizontalAlignment.Right,
            TextVerticalAlignment = OxyPlot.VerticalAlignment.Middle,
            Background = OxyColors.White,
            StrokeThickness = 0,
        });
    }

    private static double Across(FNumber aperture) => DoublingAxis.Place(aperture.Value, 1, StopsPerDoubling);
}
