using System.Globalization;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A list of short texts, which flows over pages item by item.</summary>
internal sealed record ItemList(IReadOnlyList<string> Items, ItemMarker Marker, double SizePt = TypeScale.Body) : Block
{
    private const double Gap = 1;

    public override Fit Fit(double width, double height)
    {
        var list = new Tag(TagKind.List) { Numbered = Marker == ItemMarker.Number };
        return new Stack([.. Items.Select((item, i) => new Item(item, Marker, i + 1, SizePt, list))], Gap).Fit(width, height);
    }

    private sealed record Item(string Text, ItemMarker Marker, int Number, double SizePt, Tag List) : Block
    {
        // Room for the marker, in line heights.
        private const double Indent = 1.3;

        public override Fit Fit(double width, double height)
        {
            var lineHeight = TypeScale.LineHeight(SizePt);
            var lines = TextWrap.Lines(Text, width - (Indent * lineHeight), SizePt, TextWeight.Regular);
            var item = Tag.Item(List, Marker switch { ItemMarker.TickBox => TickBox.InWords, ItemMarker.Dot => "•", _ => "" });
            return Layout.Fit.WholeOrNothing(
                this,
                "A list item",
                lines.Count * lineHeight,
                height,
                () => [Mark(lineHeight) with { Tag = item.Parts[0] }, .. TypeScale.Set(lines, Indent * lineHeight, SizePt, TextWeight.Regular, tag: item.Parts[1])]);
        }

        private Primitive Mark(double lineHeight) => Marker switch
        {
            ItemMarker.TickBox => TickBox.At(0, lineHeight, SizePt),
            ItemMarker.Number => new Label(
                new Point(0, TypeScale.Baseline(SizePt)), Number.ToString(CultureInfo.InvariantCulture), SizePt, Weight: TextWeight.Bold),
            _ => new Circle(new Point(0.35 * lineHeight, 0.52 * lineHeight), 0.12 * lineHeight, null, Fill.Black),
        };
    }
}
