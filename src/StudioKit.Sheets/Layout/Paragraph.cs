using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Running text, which may go on over the page.</summary>
internal sealed record Paragraph(string Text, double SizePt = TypeScale.Body, TextWeight Weight = TextWeight.Regular) : Block
{
    // Fewer lines than this are never left alone at the foot or the head of a page.
    private const int FewestLines = 2;

    public override Fit Fit(double width, double height)
    {
        var lines = TextWrap.Lines(Text, width, SizePt, Weight);
        var lineHeight = TypeScale.LineHeight(SizePt);
        var room = double.IsInfinity(height) ? lines.Count : (int)Math.Floor((height / lineHeight) + 1e-9);
        if (room >= lines.Count)
        {
            return Part(lines, null);
        }

        room = Math.Min(room, lines.Count - FewestLines);
        return room < FewestLines
            ? Layout.Fit.Nothing(this, FormattableString.Invariant($"A paragraph of {lines.Count} lines has no room for two of them."))
            : Part([.. lines.Take(room)], this with { Text = string.Join(' ', lines.Skip(room)) });
    }

    private Fit Part(IReadOnlyList<string> lines, Block? rest) =>
        new(lines.Count * TypeScale.LineHeight(SizePt), [.. TypeScale.Set(lines, 0, SizePt, Weight)]) { Rest = rest };
}
