using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>Running text, which may go on over the page.</summary>
internal sealed record Paragraph(string Text, double SizePt = TypeScale.Body, TextWeight Weight = TextWeight.Regular) : Block
{
    // Fewer lines than this are never left alone at the foot or the head of a page.
    private const int FewestLines = 2;

    /// <summary>Lines that the page before had no room for: a word that was broken stays broken where it was.</summary>
    private (double Width, IReadOnlyList<string> Lines)? Left { get; init; }

    /// <summary>Which paragraph this goes on; none where it is the beginning.</summary>
    private Tag? Begun { get; init; }

    public override Fit Fit(double width, double height)
    {
        var lines = Left is { } left && left.Width == width ? left.Lines : TextWrap.Lines(Text, width, SizePt, Weight);
        var tag = Begun ?? new Tag(TagKind.Paragraph);
        var lineHeight = TypeScale.LineHeight(SizePt);
        var room = double.IsInfinity(height) ? lines.Count : (int)Math.Floor((height / lineHeight) + 1e-9);
        if (room >= lines.Count)
        {
            return Part(lines, tag, null);
        }

        room = Math.Min(room, lines.Count - FewestLines);
        return room < FewestLines
            ? Layout.Fit.Nothing(this, FormattableString.Invariant($"A paragraph of {lines.Count} lines has no room for two of them."))
            : Part([.. lines.Take(room)], tag, this with { Text = string.Join(' ', lines.Skip(room)), Left = (width, [.. lines.Skip(room)]), Begun = tag });
    }

    private Fit Part(IReadOnlyList<string> lines, Tag tag, Block? rest) =>
        new(lines.Count * TypeScale.LineHeight(SizePt), [.. TypeScale.Set(lines, 0, SizePt, Weight, tag: tag)]) { Rest = rest };
}
