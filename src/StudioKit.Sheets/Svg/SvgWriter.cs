using System.Globalization;
using System.Text;
using System.Xml;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Svg;

/// <summary>Writes a drawing as SVG at true size: one user unit is one millimetre.</summary>
public static class SvgWriter
{
    private const string SvgNamespace = "http://www.w3.org/2000/svg";
    private const double Margin = 2;

    /// <summary>Writes a drawing, with a small white margin around it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <returns>UTF-8 text of an SVG file, the same for the same drawing.</returns>
    public static byte[] Write(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return Write(drawing.Bounds.Grown(Margin), drawing.Title, drawing.Description, drawing.PlainMarks());
    }

    /// <summary>Writes a finished page, paper and all.</summary>
    internal static byte[] Write(Page page)
    {
        var drawing = new Drawing("Page", "", page.Marks);
        return Write(new Bounds(0, 0, page.WidthMm, page.HeightMm), drawing.Title, drawing.Description, drawing.PlainMarks());
    }

    private static byte[] Write(Bounds view, string title, string description, IEnumerable<Primitive> marks)
    {
        using var stream = new MemoryStream();
        var settings = new XmlWriterSettings { Indent = true, NewLineChars = "\n", Encoding = new UTF8Encoding(false) };
        using (var xml = XmlWriter.Create(stream, settings))
        {
            WriteRoot(xml, view, title, description, marks);
        }

        return stream.ToArray();
    }

    private static void WriteRoot(XmlWriter xml, Bounds view, string title, string description, IEnumerable<Primitive> marks)
    {
        xml.WriteStartElement("svg", SvgNamespace);
        xml.WriteAttributeString("width", Number(view.Width) + "mm");
        xml.WriteAttributeString("height", Number(view.Height) + "mm");
        xml.WriteAttributeString(
            "viewBox", string.Join(' ', Number(view.Left), Number(view.Top), Number(view.Width), Number(view.Height)));
        xml.WriteAttributeString("role", "img");
        xml.WriteAttributeString("aria-labelledby", "title desc");
        xml.WriteAttributeString("font-family", $"'{BundledFonts.Family}', '{BundledFonts.FallbackFamily}', sans-serif");
        WriteText(xml, "title", title);
        WriteText(xml, "desc", description);
        WriteElement(xml, "rect", ("x", Number(view.Left)), ("y", Number(view.Top)), ("width", Number(view.Width)), ("height", Number(view.Height)), ("fill", "white"));
        foreach (var mark in marks)
        {
            WriteMark(xml, mark);
        }

        xml.WriteEndElement();
    }

    private static void WriteText(XmlWriter xml, string name, string text)
    {
        xml.WriteStartElement(name, SvgNamespace);
        xml.WriteAttributeString("id", name);
        xml.WriteString(text);
        xml.WriteEndElement();
    }

    private static void WriteMark(XmlWriter xml, Primitive mark)
    {
        switch (mark)
        {
            case Line line:
                WriteElement(xml, "path", [("d", Path([line.From, line.To])), .. Style(line.Stroke, Fill.None)]);
                break;
            case Polyline polyline:
                WriteElement(xml, "path", [("d", Path(polyline.Points)), .. Style(polyline.Stroke, Fill.None)]);
                break;
            case Polygon polygon:
                WriteElement(
                    xml, "path", [("d", Path(polygon.Points) + "Z"), ("fill-rule", "evenodd"), .. Style(polygon.Stroke, polygon.Fill)]);
                break;
            case Circle circle:
                WriteElement(
                    xml,
                    "circle",
                    [
                        ("cx", Number(circle.Centre.X)), ("cy", Number(circle.Centre.Y)), ("r", Number(circle.Radius)),
                        .. Style(circle.Stroke, circle.Fill),
                    ]);
                break;
            case Arc arc:
                WriteElement(xml, "path", [("d", ArcPath(arc)), .. Style(arc.Stroke, Fill.None)]);
                break;
            case Label label:
                WriteLabel(xml, label);
                break;
            case Picture picture:
                WriteElement(
                    xml,
                    "image",
                    ("x", Number(picture.Place.Left)), ("y", Number(picture.Place.Top)), ("width", Number(picture.Place.Width)), ("height", Number(picture.Place.Height)),
                    ("preserveAspectRatio", "none"), ("aria-label", picture.Description), ("href", "data:image/jpeg;base64," + Convert.ToBase64String(picture.Jpeg.Span)));
                break;
            default:
                throw new InvalidOperationException($"No SVG for {mark.GetType().Name}.");
        }
    }

    private static void WriteLabel(XmlWriter xml, Label label)
    {
        var start = label.Baseline();
        xml.WriteStartElement("text", SvgNamespace);
        xml.WriteAttributeString("x", Number(start.X));
        xml.WriteAttributeString("y", Number(start.Y));
        xml.WriteAttributeString("font-size", Number(label.SizePt * TextMeter.MillimetresPerPoint));
        if (label.Weight == TextWeight.Figures)
        {
            xml.WriteAttributeString("font-family", $"'{BundledFonts.FallbackFamily}', sans-serif");
        }

        if (label.Weight != TextWeight.Regular)
        {
            xml.WriteAttributeString("font-weight", "bold");
        }

        if (label.Slanted)
        {
            xml.WriteAttributeString("font-style", "italic");
        }

        if (label.Turn != 0)
        {
            xml.WriteAttributeString(
                "transform", $"rotate({Number(label.Turn * 180 / Math.PI)} {Number(start.X)} {Number(start.Y)})");
        }

        xml.WriteAttributeString("fill", Colour(label.Ink));
        xml.WriteString(label.Text);
        xml.WriteEndElement();
    }

    private static string Path(IReadOnlyList<Point> points) =>
        "M" + string.Join('L', points.Select(point => $"{Number(point.X)} {Number(point.Y)}"));

    private static string ArcPath(Arc arc)
    {
        var (from, to) = (arc.At(arc.Start), arc.At(arc.Start + arc.Sweep));
        var large = Math.Abs(arc.Sweep) > Math.PI ? 1 : 0;
        var clockwise = arc.Sweep > 0 ? 1 : 0;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"M{Number(from.X)} {Number(from.Y)}A{Number(arc.Radius)} {Number(arc.Radius)} 0 {large} {clockwise} {Number(to.X)} {Number(to.Y)}");
    }

    private static IEnumerable<(string Name, string Value)> Style(Stroke? stroke, Fill fill)
    {
        yield return ("fill", Colour(fill));
        if (stroke is not { } line)
        {
            yield break;
        }

        yield return ("stroke", "black");
        yield return ("stroke-width", Number(line.WidthMm));
        if (line.DashesMm.Count > 0)
        {
            yield return ("stroke-dasharray", string.Join(' ', line.DashesMm.Select(Number)));
        }
    }

    private static string Colour(Fill fill) => fill switch
    {
        Fill.White => "white",
        Fill.LightGrey => Grey(Shades.LightGrey),
        Fill.Grey => Grey(Shades.Grey),
        Fill.Black => "black",
        _ => "none",
    };

    private static string Grey(byte level) => string.Create(CultureInfo.InvariantCulture, $"rgb({level},{level},{level})");

    private static void WriteElement(XmlWriter xml, string name, params IEnumerable<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(name, SvgNamespace);
        foreach (var (attribute, value) in attributes)
        {
            xml.WriteAttributeString(attribute, value);
        }

        xml.WriteEndElement();
    }

    // A ten-thousandth of a millimetre is finer than any printer; adding zero turns −0 into 0.
    private static string Number(double value) =>
        (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);
}
