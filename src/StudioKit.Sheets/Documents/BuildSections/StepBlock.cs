using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>A step as every guide on the build sheet has it: its drawing, and beside it its number, what it is about, and what to do.</summary>
internal static class StepBlock
{
    /// <summary>Room for its drawing [mm].</summary>
    public const double DrawingWidth = 103;

    private const double WordsPt = 10.5;
    private const double TitlePt = 13;
    private const double TallestDrawing = 110;

    /// <summary>A drawing without words made as large as there is room for.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="height">Room for it [mm].</param>
    public static Drawing Fitted(Drawing drawing, double height)
    {
        var bounds = drawing.Bounds;
        return drawing.Scaled(Math.Min(0.98 * DrawingWidth / bounds.Width, height / bounds.Height));
    }

    /// <summary>The block.</summary>
    /// <param name="number">Its number [1].</param>
    /// <param name="title">What it is about, a few words.</param>
    /// <param name="words">What to do.</param>
    /// <param name="drawing">Its drawing at its size on paper.</param>
    public static Block Of(int number, string title, string words, Drawing drawing) => new SideBySide(
    [
        (new DrawingBlock(drawing, MaxHeight: TallestDrawing, Caption: ""), 1.65),
        (Of(number, title, words), 1),
    ]);

    /// <summary>The same of a step that has no drawing.</summary>
    public static Block Of(int number, string title, string words) =>
        new Stack([new Paragraph(FormattableString.Invariant($"{number}  {title}"), TitlePt, TextWeight.Bold), new Paragraph(words, WordsPt)]);
}
