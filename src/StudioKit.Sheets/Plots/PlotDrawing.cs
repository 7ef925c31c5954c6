using OxyPlot;
using OxyPlot.Legends;
using OxyPlot.Series;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Plots;

/// <summary>The common look of all plots, and their way into a drawing.</summary>
internal static class PlotDrawing
{
    // Two stand beside each other on a page.
    private const double WidthMm = 84;
    private const double HeightMm = 42;

    // Readable in black and white: each line has its own dashes and marker.
    private static readonly (OxyPlot.LineStyle Line, MarkerType Marker, bool Filled)[] Looks =
    [
        (OxyPlot.LineStyle.Solid, MarkerType.Circle, true), (OxyPlot.LineStyle.Dash, MarkerType.Square, false), (OxyPlot.LineStyle.DashDot, MarkerType.Triangle, true),
        (OxyPlot.LineStyle.Solid, MarkerType.Square, true), (OxyPlot.LineStyle.Dash, MarkerType.Circle, false), (OxyPlot.LineStyle.DashDot, MarkerType.Diamond, false),
    ];

    /// <summary>How many lines can be told from each other.</summary>
    public static int MostLines => Looks.Length;

    /// <summary>An empty plot.</summary>
    public static PlotModel Empty()
    {
        var model = new PlotModel
        {
            DefaultFontSize = 9,
            TextColor = OxyColors.Black,
            PlotAreaBorderColor = OxyColors.Black,
            PlotAreaBorderThickness = new OxyThickness(0.8),
            Padding = new OxyThickness(4, 4, 14, 4),
        };
        model.Legends.Add(new Legend
        {
            LegendPlacement = LegendPlacement.Outside,
            LegendPosition = LegendPosition.BottomCenter,
            LegendOrientation = LegendOrientation.Horizontal,
            LegendBorderThickness = 0,
            LegendSymbolLength = 24,
            LegendColumnSpacing = 8,
        });
        return model;
    }

    /// <summary>A line with markers in the look of its place among the lines.</summary>
    public static LineSeries Line(string title, int place)
    {
        var (line, marker, filled) = Looks[place % Looks.Length];
        return new LineSeries
        {
            Title = title,
            Color = OxyColors.Black,
            StrokeThickness = 1.1,
            LineStyle = line,
            MarkerType = marker,
            MarkerSize = 2.2,
            MarkerFill = filled ? OxyColors.Black : OxyColors.White,
            MarkerStroke = OxyColors.Black,
            MarkerStrokeThickness = 0.9,
        };
    }

    /// <summary>Paints the plot into a drawing.</summary>
    /// <param name="model">The plot.</param>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="description">The same for someone who cannot see it.</param>
    public static Drawing Of(PlotModel model, string title, string description) => Of(model, title, description, WidthMm, HeightMm);

    /// <summary>Paints the plot into a drawing of a size.</summary>
    /// <param name="model">The plot.</param>
    /// <param name="title">What it shows, in a few words.</param>
    /// <param name="description">The same for someone who cannot see it.</param>
    /// <param name="widthMm">Width [mm].</param>
    /// <param name="heightMm">Height [mm].</param>
    public static Drawing Of(PlotModel model, string title, string description, double widthMm, double heightMm)
    {
        var context = new DrawingRenderContext();
        var plot = (IPlotModel)model;
        plot.Update(updateData: true);
        plot.Render(context, new OxyRect(0, 0, widthMm / DrawingRenderContext.MillimetresPerUnit, heightMm / DrawingRenderContext.MillimetresPerUnit));
        return new Drawing(title, description, context.Marks);
    }
}
