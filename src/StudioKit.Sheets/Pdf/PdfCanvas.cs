using PdfSharp.Drawing;
using PdfSharp.Pdf;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Pdf;

/// <summary>Turns marks in millimetres into the operators of one PDF page.</summary>
internal sealed class PdfCanvas : IDisposable
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private readonly XGraphics _graphics;
    private readonly Dictionary<(FontFace Face, double Size, bool Slanted), XFont> _fonts;

    private readonly MissingLetters? _missing;

    public PdfCanvas(PdfPage page, Dictionary<(FontFace Face, double Size, bool Slanted), XFont> fonts, MissingLetters? missing) =>
        (_graphics, _fonts, _missing) = (XGraphics.FromPdfPage(page), fonts, missing);

    public void Dispose() => _graphics.Dispose();

    /// <summary>Puts an operator that begins or ends marked content between what is drawn, never inside a text object.</summary>
    public void Mark(string operators)
    {
        // To save its state PDFsharp has to leave a text object; the pair itself says nothing and is taken out again.
        var content = _graphics.Internals.ContentStringBuilder!;
        _graphics.Restore(_graphics.Save());
        var (pair, length) = ("q\nQ\n", content.Length);
        if (length >= pair.Length && content.ToString(length - pair.Length, pair.Length) == pair)
        {
            content.Length = length - pair.Length;
        }

        content.Append(operators);
    }

    public void Draw(Primitive mark)
    {
        switch (mark)
        {
            case Line line:
                _graphics.DrawLine(Pen(line.Stroke), At(line.From), At(line.To));
                break;
            case Polyline polyline:
                _graphics.DrawLines(Pen(polyline.Stroke), At(polyline.Points));
                break;
            case Polygon polygon:
                DrawPolygon(polygon);
                break;
            case Circle circle:
                DrawCircle(circle);
                break;
            case Arc arc:
                _graphics.DrawArc(
                    Pen(arc.Stroke), Square(arc.Centre, arc.Radius), arc.Start * 180 / Math.PI, arc.Sweep * 180 / Math.PI);
                break;
            case Label label:
                DrawLabel(label);
                break;
            case Picture picture:
                DrawPicture(picture);
                break;
            default:
                throw new InvalidOperationException($"No PDF operators for {mark.GetType().Name}.");
        }
    }

    private static XPoint At(Point point) => new(point.X * PointsPerMillimetre, point.Y * PointsPerMillimetre);

    private static XPoint[] At(IReadOnlyList<Point> points) => [.. points.Select(At)];

    private static XRect Square(Point centre, double radius) =>
        new(At(centre.Plus(-radius, -radius)), At(centre.Plus(radius, radius)));

    private static XPen Pen(Stroke stroke)
    {
        var pen = new XPen(XColors.Black, stroke.WidthMm * PointsPerMillimetre) { LineJoin = XLineJoin.Miter };
        if (stroke.DashesMm.Count > 0)
        {
            // PDFsharp counts dashes in line widths.
            pen.DashPattern = [.. stroke.DashesMm.Select(length => length / stroke.WidthMm)];
        }

        return pen;
    }

    private static XSolidBrush? Brush(Fill fill) => fill switch
    {
        Fill.White => XBrushes.White,
        Fill.LightGrey => new XSolidBrush(XColor.FromGrayScale(Shades.LightGrey / 255.0)),
        Fill.Grey => new XSolidBrush(XColor.FromGrayScale(Shades.Grey / 255.0)),
        Fill.Black => XBrushes.Black,
        _ => null,
    };

    private void DrawPolygon(Polygon polygon)
    {
        var (brush, pen) = (Brush(polygon.Fill), polygon.Stroke is { } stroke ? Pen(stroke) : null);
        if (brush is null && pen is null)
        {
            return;
        }

        // A rectangle is written in four numbers in place of ten, and most shapes are one: the squares of codes. Dashes go round from the first corner.
        if (polygon.Stroke is null or { DashesMm.Count: 0 } && IsUprightRectangle(polygon.Points))
        {
            var bounds = polygon.Bounds;
            _graphics.DrawRectangle(pen, brush, new XRect(At(new Point(bounds.Left, bounds.Top)), At(new Point(bounds.Right, bounds.Bottom))));
            return;
        }

        _graphics.DrawPolygon(pen, brush, At(polygon.Points), XFillMode.Alternate);
    }

    private static bool IsUprightRectangle(IReadOnlyList<Point> corners)
    {
        if (corners.Count != 4)
        {
            return false;
        }

        var (a, b, c, d) = (corners[0], corners[1], corners[2], corners[3]);
        return (IsSame(a.Y, b.Y) && IsSame(b.X, c.X) && IsSame(c.Y, d.Y) && IsSame(d.X, a.X))
            || (IsSame(a.X, b.X) && IsSame(b.Y, c.Y) && IsSame(c.X, d.X) && IsSame(d.Y, a.Y));
    }

    // A quarter turn leaves rounding behind.
    private static bool IsSame(double one, double other) => Math.Abs(one - other) < 1e-6;

    private void DrawCircle(Circle circle)
    {
        var square = Square(circle.Centre, circle.Radius);
        if (Brush(circle.Fill) is { } brush)
        {
            _graphics.DrawEllipse(brush, square);
        }

        if (circle.Stroke is { } stroke)
        {
            _graphics.DrawEllipse(Pen(stroke), square);
        }
    }

    private void DrawLabel(Label label)
    {
        _missing?.Note(label.Text);
        var start = label.Baseline();
        var state = label.Turn == 0 ? null : _graphics.Save();
        if (state is not null)
        {
            _graphics.RotateAtTransform(label.Turn * 180 / Math.PI, At(start));
        }

        var x = start.X;
        foreach (var run in TextMeter.Runs(label.GoesOn ? label.Text + " " : label.Text, label.Weight))
        {
            _graphics.DrawString(run.Text, Font(run.Face, label.SizePt, label.Slanted), Brush(label.Ink)!, At(start with { X = x }));
            x += TextMeter.Width(run, label.SizePt);
        }

        if (state is not null)
        {
            _graphics.Restore(state);
        }
    }

    private void DrawPicture(Picture picture)
    {
        using var stream = new MemoryStream(picture.Jpeg.ToArray());
        using var image = XImage.FromStream(stream);
        _graphics.DrawImage(image, new XRect(At(new Point(picture.Place.Left, picture.Place.Top)), At(new Point(picture.Place.Right, picture.Place.Bottom))));
    }

    private XFont Font(FontFace face, double size, bool slanted)
    {
        if (!_fonts.TryGetValue((face, size, slanted), out var font))
        {
            // Unicode encoding makes every letter extractable, whatever its alphabet.
            var options = new XPdfFontOptions(PdfFontEncoding.Unicode);
            font = new XFont(face.ToString(), size, slanted ? XFontStyleEx.Italic : XFontStyleEx.Regular, options);
            _fonts.Add((face, size, slanted), font);
        }

        return font;
    }
}
