using OxyPlot;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Plots;

/// <summary>Takes what a plot paints and keeps it as marks of a drawing, in millimetres and in black and grey.</summary>
/// <remarks>A plot counts in screen units of 1/96 inch, from its upper left corner. Nothing is clipped: axes are laid around all points.</remarks>
internal sealed class DrawingRenderContext : ClippingRenderContext
{
    /// <summary>Millimetres to a plot's unit.</summary>
    public const double MillimetresPerUnit = 25.4 / 96;

    private const double PointsPerUnit = 72.0 / 96;
    private const double LineHeight = 1.25;
    private const byte Lightest = 200;
    private const byte Darkest = 90;

    private readonly List<Primitive> _marks = [];

    /// <summary>What was painted, later marks on top.</summary>
    public IReadOnlyList<Primitive> Marks => _marks;

    /// <inheritdoc/>
    public override void DrawLine(
        IList<ScreenPoint> points, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode, double[] dashArray, LineJoin lineJoin)
    {
        if (points.Count > 1 && StrokeOf(stroke, thickness, dashArray) is { } line)
        {
            _marks.Add(new Polyline([.. points.Select(At)], line));
        }
    }

    /// <inheritdoc/>
    public override void DrawPolygon(
        IList<ScreenPoint> points,
        OxyColor fill,
        OxyColor stroke,
        double thickness,
        EdgeRenderingMode edgeRenderingMode,
        double[] dashArray,
        LineJoin lineJoin)
    {
        var (inside, outline) = (FillOf(fill), StrokeOf(stroke, thickness, dashArray));
        if (points.Count > 2 && (inside != Fill.None || outline is not null))
        {
            _marks.Add(new Polygon([.. points.Select(At)], outline, inside));
        }
    }

    /// <inheritdoc/>
    public override void DrawEllipse(OxyRect extents, OxyColor fill, OxyColor stroke, double thickness, EdgeRenderingMode edgeRenderingMode) =>
        _marks.Add(new Circle(At(extents.Center), extents.Width / 2 * MillimetresPerUnit, StrokeOf(stroke, thickness, []), FillOf(fill)));

    /// <inheritdoc/>
    public override void DrawText(
        ScreenPoint p,
        string text,
        OxyColor fill,
        string? fontFamily,
        double fontSize,
        double fontWeight,
        double rotation,
        HorizontalAlignment horizontalAlignment,
        VerticalAlignment verticalAlignment,
        OxySize? maxSize)
    {
        if (!string.IsNullOrEmpty(text))
        {
            _marks.Add(new Label(
                At(p), text, fontSize * PointsPerUnit, AnchorOf(horizontalAlignment), RiseOf(verticalAlignment), rotation * Math.PI / 180, WeightOf(fontWeight)));
        }
    }

    /// <inheritdoc/>
    public override OxySize MeasureText(string text, string? fontFamily, double fontSize, double fontWeight)
    {
        var points = fontSize * PointsPerUnit;
        return string.IsNullOrEmpty(text)
            ? OxySize.Empty
            : new OxySize(
                TextMeter.Width(text, points, WeightOf(fontWeight)) / MillimetresPerUnit,
                fontSize * LineHeight);
    }

    /// <inheritdoc/>
    protected override void SetClip(OxyRect clippingRectangle)
    {
    }

    /// <inheritdoc/>
    protected override void ResetClip()
    {
    }

    private static Point At(ScreenPoint point) => new(point.X * MillimetresPerUnit, point.Y * MillimetresPerUnit);

    private static Stroke? StrokeOf(OxyColor colour, double thickness, double[]? dashes) => colour.IsInvisible() || thickness <= 0
        ? null
        : new Stroke(thickness * MillimetresPerUnit, dashes?.Length switch
        {
            null or 0 => Drawings.LineStyle.Solid,
            2 => Drawings.LineStyle.Dashed,
            _ => Drawings.LineStyle.Chain,
        });

    private static Fill FillOf(OxyColor colour) => colour.IsInvisible() ? Fill.None : colour.G switch
    {
        255 => Fill.White,
        > Lightest => Fill.LightGrey,
        > Darkest => Fill.Grey,
        _ => Fill.Black,
    };

    private static TextWeight WeightOf(double weight) => weight > 500 ? TextWeight.Bold : TextWeight.Regular;

    private static TextAnchor AnchorOf(HorizontalAlignment alignment) => alignment switch
    {
        HorizontalAlignment.Center => TextAnchor.Middle,
        HorizontalAlignment.Right => TextAnchor.End,
        _ => TextAnchor.Start,
    };

    private static TextRise RiseOf(VerticalAlignment alignment) => alignment switch
    {
        VerticalAlignment.Top => TextRise.Top,
        VerticalAlignment.Middle => TextRise.Middle,
        _ => TextRise.Baseline,
    };
}
