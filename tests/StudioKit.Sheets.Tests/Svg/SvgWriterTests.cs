using System.Globalization;
using System.Text;
using System.Xml.Linq;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Svg;

namespace StudioKit.Sheets.Tests.Svg;

public sealed class SvgWriterTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    private static readonly Drawing Sample = new(
        "Rail <A> & \"B\"",
        "One line of 100 mm",
        [
            new Line(new Point(-5, 0), new Point(95, 0), Stroke.Hidden),
            new Circle(new Point(20, 20), 5, Stroke.Edge, Fill.Grey),
            new Arc(new Point(50, 20), 10, 0, Math.PI / 2, Stroke.Edge),
            new Label(new Point(10, 40), "Ω < Ж & é", 12, Weight: TextWeight.Bold),
        ]);

    /// <remarks>SVG 2, section 8.2: a viewBox as wide as the viewport in millimetres makes one user unit one millimetre.</remarks>
    [Fact]
    public void One_user_unit_is_one_millimetre()
    {
        var root = Parse(Sample);
        var box = root.Attribute("viewBox")!.Value.Split(' ').Select(n => double.Parse(n, CultureInfo.InvariantCulture)).ToArray();

        root.Attribute("width")!.Value.Should().Be(box[2].ToString(CultureInfo.InvariantCulture) + "mm");
        root.Attribute("height")!.Value.Should().Be(box[3].ToString(CultureInfo.InvariantCulture) + "mm");
        root.Elements(Ns + "path").First().Attribute("d")!.Value.Should().Be("M-5 0L95 0");
    }

    [Fact]
    public void Title_and_description_speak_for_the_picture()
    {
        var root = Parse(Sample);

        root.Attribute("role")!.Value.Should().Be("img");
        root.Element(Ns + "title")!.Value.Should().Be("Rail <A> & \"B\"");
        root.Element(Ns + "desc")!.Value.Should().Be("One line of 100 mm");
    }

    [Fact]
    public void Text_survives_markup_characters_and_other_alphabets()
    {
        var text = Parse(Sample).Elements(Ns + "text").Single();

        text.Value.Should().Be("Ω < Ж & é");
        double.Parse(text.Attribute("font-size")!.Value, CultureInfo.InvariantCulture).Should().BeApproximately(12 * 25.4 / 72, 5e-5);
    }

    [Fact]
    public void Dashes_are_in_millimetres() =>
        Parse(Sample).Elements(Ns + "path").First().Attribute("stroke-dasharray")!.Value.Should().Be("2.5 1.2");

    [Fact]
    public void The_same_drawing_gives_the_same_bytes() => SvgWriter.Write(Sample).Should().Equal(SvgWriter.Write(Sample with { }));

    private static XElement Parse(Drawing drawing) => XDocument.Parse(Encoding.UTF8.GetString(SvgWriter.Write(drawing))).Root!;
}
