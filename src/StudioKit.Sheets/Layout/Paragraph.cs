using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Running text, which may go on over the page.</summary>
internal sealed record Paragraph(string Text, double SizePt = TypeScale.Body, TextWeight Weight = TextWeight.Regular) : Block
{
    // Fewer lines than this are never left alone at the foot or the head of a page.
    private const int FewestLines = 2;

    /// <summary>Lines that the page before had no room for: a word that was broken stays broken where it was.</summary>
    private (double Width, IReadOnlyList<string> Lines)? Left { get; init; }

    public override Fit Fit(double width, double height)
    {
        var lines = Left is { } left && left.Width == width ? left.Lines : TextWrap.Lines(Text, width, SizePt, Weight);
        var lineHeight = TypeScale.LineHeight(SizePt);
        var room = double.IsInfinity(height) ? lines.Count : (int)Math.Floor((height / lineHeight) + 1e-9);
        if (room >= lines.Count)
        {
            return Part(lines, null);
        }

        room = Math.Min(room, lines.Count - FewestLines);
        return room < FewestLines
            ? Layout.Fit.Nothing(this, FormattableString.Invariant($"A paragraph of {lines.Count} lines has no room for two of them."))
            : Part([.. lines.Take(room)], this with { Text = string.Join(' ', lines.Skip(room)), Left = (width, [.. lines.Skip(room)]) });
    }

    private Fit Part(IReadOnlyList<string> lines, Block? rest) =>
        new(lines.Count * TypeScale.LineHeight(SizePt), [.. TypeScale.Set(lines, 0, SizePt, Weight)]) { Rest = rest };
}
