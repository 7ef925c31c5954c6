using System.Globalization;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;
using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using StudioKit.Sheets.Drawings;
using StudioKit.Wording;

namespace StudioKit.Sheets.Plots;

/// <summary>Designs that no other beats, by the first two measures that they are compared by; the kit as it is among them.</summary>
public static class DesignPlot
{
    private const double WidthMm = 170;
    private const double HeightMm = 110;
    private const double MarkSize = 2.4;
    private const double OwnSize = 5;

    private static readonly ScreenVector NumberBeside = new(5, -4);

    /// <summary>The plot.</summary>
    /// <param name="result">The search; it compares by two measures at least.</param>
    /// <exception cref="ArgumentException">It compares by one alone.</exception>
    public static Drawing Of(DesignSearchResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Aim.Measures.Count < 2)
        {
            throw new ArgumentException("A plot has two measures.", nameof(result));
        }

        var (across, up) = (result.Aim.Measures[0], result.Aim.Measures[1]);
        var model = PlotDrawing.Empty();
        model.Axes.Add(Axis(AxisPosition.Bottom, across, result));
        model.Axes.Add(Axis(AxisPosition.Left, up, result));
        if (result.Own.Figures is { } own)
        {
            model.Series.Add(Marks("the kit as it is", MarkerType.Square, OwnSize, [own], across, up));
        }

        model.Series.Add(Marks("no design beats it", MarkerType.Circle, MarkSize, [.. result.Shown.Select(design => design.Figures)], across, up));
        foreach (var design in result.Shown)
        {
            model.Annotations.Add(new TextAnnotation
            {
                Text = design.Number.ToString(CultureInfo.InvariantCulture),
                TextPosition = new DataPoint(Place(across, design.Figures), Place(up, design.Figures)),
                Offset = NumberBeside,
                Stroke = OxyColors.Transparent,
                TextHorizontalAlignment = HorizontalAlignment.Left,
                TextVerticalAlignment = VerticalAlignment.Bottom,
            });
        }

        return PlotDrawing.Of(
            model, "Designs", $"{result.Shown.Count} designs that no other beats by {string.Join(", ", result.Aim.Measures.Select(DesignText.Name))}; {DesignText.Name(up)} against {DesignText.Name(across)}.",
            WidthMm, HeightMm);
    }

    private static ScatterSeries Marks(string title, MarkerType marker, double size, IReadOnlyList<DesignFigures> designs, DesignMeasure across, DesignMeasure up)
    {
        var series = new ScatterSeries
        {
            Title = title,
            MarkerType = marker,
            MarkerSize = size,
            MarkerFill = marker == MarkerType.Circle ? OxyColors.Black : OxyColors.White,
            MarkerStroke = OxyColors.Black,
            MarkerStrokeThickness = 1,
        };
        series.Points.AddRange(designs.Where(figures => figures[across] is not null && figures[up] is not null).Select(figures => new ScatterPoint(Place(across, figures), Place(up, figures))));
        return series;
    }

    private static double Place(DesignMeasure measure, DesignFigures figures) => figures[measure]!.Value / (measure == DesignMeasure.Mass ? 1000 : 1);

    private static LinearAxis Axis(AxisPosition position, DesignMeasure measure, DesignSearchResult result)
    {
        double[] places = [.. result.Shown.Select(design => design.Figures).Append(result.Own.Figures).Where(figures => figures?[measure] is not null).Select(figures => Place(measure, figures!))];
        var (least, most) = places.Length == 0 ? (0, 1) : (places.Min(), places.Max());
        var margin = most > least ? (most - least) * 0.08 : Math.Max(1e-3, Math.Abs(most) * 0.05);
        return new LinearAxis
        {
            Position = position,
            Title = $"{DesignText.Name(measure)}, {Unit(measure, result)}",
            Minimum = least - margin,
            Maximum = most + margin,
            TickStyle = OxyPlot.Axes.TickStyle.Outside,
        };
    }

    private static string Unit(DesignMeasure measure, DesignSearchResult result) => measure switch
    {
        DesignMeasure.Mass => "kg",
        DesignMeasure.Price => DesignText.CurrencyOf(result),
        DesignMeasure.WhiteMargin => "stops",
        DesignMeasure.FirstWhite => "share of 1",
        DesignMeasure.Energy => "Wh",
        DesignMeasure.PackedLength or DesignMeasure.Depth => "mm",
        DesignMeasure.Smear => "µm",
        DesignMeasure.Wind => "m/s",
        _ => "count",
    };
}
