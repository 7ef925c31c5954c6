using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>Blocks with texts that nobody would wish for, at any width: no text leaves its room or lies over another.</summary>
public sealed class BlocksOnPaperTests
{
    private static readonly Gen<string> Nasty = Gen.OneOf(
        Gen.String[Gen.Char['a', 'z'], 1, 90],
        Gen.String[Gen.OneOf(Gen.Char['a', 'z'], Gen.Int[0, 6].Select(i => " -_/.19"[i])), 1, 120],
        Gen.String[Gen.Char['А', 'я'], 1, 90],
        Gen.String[Gen.Char['\u4e00', '\u4eff'], 1, 60],
        Gen.Const(new string('W', 120)),
        Gen.Const("1234567890123456789012345678901234567890 mm"),
        Gen.Const("e\u0301e\u0301e\u0301 בור 🦋"));

    [Fact]
    public void Texts_of_blocks_stay_in_their_room_and_off_each_other() =>
        Gen.Select(Nasty, Nasty, Gen.Int[0, 9], Gen.Double[60, 180]).Sample(
            (first, second, kind, width) =>
            {
                var fit = Block(kind, first, second).Fit(width, double.PositiveInfinity);

                var texts = new Drawing("", "", fit.Marks).PlainMarks().OfType<Label>().Where(label => label.Text.Length > 0).Select(label => (label.Text, Box: TextBox.Of(label))).ToList();
                texts.Where(text => text.Box.Bounds.Left < -0.01 || text.Box.Bounds.Right > width + 0.01 || text.Box.Bounds.Top < -0.01 || text.Box.Bounds.Bottom > fit.Height + 0.6).Should().BeEmpty();
                for (var i = 0; i < texts.Count; i++)
                {
                    texts.Take(i).Where(other => other.Box.Covers(texts[i].Box, 0.3)).Should().BeEmpty($"'{texts[i].Text}' has a place of its own at {width} mm");
                }
            },
            iter: 200);

    private static Block Block(int kind, string first, string second) => kind switch
    {
        0 => new Paragraph(first + " " + second),
        1 => new Heading(first, 2),
        2 => new ItemList([first, second], ItemMarker.Number),
        3 => new Caution(first, second),
        4 => new Table([new Column(first), new Column("Mass", ColumnKind.Decimal), new Column("Length", ColumnKind.Right)], [new TableRow([second, "1.25 kg", "450 mm"]), new TableRow([first, "10 kg", ""], Total: true)]),
        5 => new DrawingBlock(new Drawing(first, second, [Polygon.Rectangle(new Bounds(0, 0, 300, 80), Stroke.Edge), .. Many(first, second)])),
        6 => new DrawingBlock(new Drawing(first, second, [.. Many(first, second), new Dimension(new Point(0, 0), new Point(6, 0), 4, first), new Dimension(new Point(6, 0), new Point(12, 0), 4, second)])),
        7 => new SideBySide([(new Paragraph(first), 1), (new Paragraph(second), 2)]),
        8 => new Stack([new Heading(first), new Paragraph(second), new TestTable(first)]),
        _ => new BoxedText("Check", first + second, 8),
    };

    // Labels that all want the same few places.
    private static IEnumerable<Label> Many(string first, string second) => Enumerable.Range(0, 12).Select(i =>
        new Label(new Point(3 * (i % 4), 2 * (i % 3)), i == 5 ? first : i == 7 ? second : $"A{i}", 8, TextAnchor.Middle, Turn: i == 9 ? -Math.PI / 2 : 0));

    private sealed record TestTable(string Text) : Block
    {
        public override Fit Fit(double width, double height) =>
            new Table([.. Enumerable.Range(0, 6).Select(i => new Column(i == 3 ? Text : $"No. {i}"))], [new TableRow([.. Enumerable.Repeat(Text, 3), "12.5", "450 mm", Text])]).Fit(width, height);
    }
}
