using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>A step as every guide on the build sheet has it: its drawing, and under it its number, what it is about, and what to do; two steps stand beside each other.</summary>
internal static class StepBlock
{
    /// <summary>Room for its drawing [mm].</summary>
    public const double DrawingWidth = 84;

    private const double WordsPt = 9.5;
    private const double TitlePt = 12;
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
    public static Block Of(int number, string title, string words, Drawing drawing) => new Stack(
        [new DrawingBlock(drawing, MaxHeight: TallestDrawing, Caption: ""), Of(number, title, words)]);

    /// <summary>The same of a step that has no drawing.</summary>
    public static Block Of(int number, string title, string words) =>
        new Stack([new Paragraph(FormattableString.Invariant($"{number}  {title}"), TitlePt, TextWeight.Bold), new Paragraph(words, WordsPt)], 1);
}
