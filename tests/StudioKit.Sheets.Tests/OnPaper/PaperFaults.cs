using StudioKit.Kits.Cards;
using StudioKit.Sheets.Cards;
using StudioKit.Sheets.Drawings;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>What is wrong with printed pages, by the places of the letters in the file: texts over each other, and texts that leave the room they were given.</summary>
internal static class PaperFaults
{
    private const double PointsPerMillimetre = 72 / 25.4;

    // Half a millimetre of play: letters reach a little past their widths.
    private const double Play = 0.5;

    public static IReadOnlyList<string> Of(SheetFile file, SheetOptions options)
    {
        using var document = PdfDocument.Open(file.Content.ToArray());
        return [.. document.GetPages().SelectMany(page => Of(page, Rooms(file.Name, options))).Select(fault => $"{file.Name}, {fault}")];
    }

    /// <summary>Texts over each other alone.</summary>
    public static IReadOnlyList<string> OverEachOther(SheetFile file)
    {
        using var document = PdfDocument.Open(file.Content.ToArray());
        return [.. document.GetPages().SelectMany(page => OverEachOther(page, PrintedText.On(page)))];
    }

    private static IEnumerable<string> OverEachOther(UglyToad.PdfPig.Content.Page page, IReadOnlyList<PrintedText> texts) =>
        PrintedText.Overlaps(texts).Select(pair => $"page {page.Number}: '{pair.Upper.Text}' over '{pair.Lower.Text}'");

    private static IEnumerable<string> Of(UglyToad.PdfPig.Content.Page page, IReadOnlyList<Bounds> rooms)
    {
        var texts = PrintedText.On(page);
        foreach (var fault in OverEachOther(page, texts))
        {
            yield return fault;
        }

        foreach (var text in texts.Where(text => !IsInRoom(Edges(text, page), rooms, page)))
        {
            yield return $"page {page.Number}: '{text.Text}' leaves its room, {Edges(text, page)}";
        }
    }

    private static Bounds Edges(PrintedText text, UglyToad.PdfPig.Content.Page page)
    {
        var (left, bottom, right, top) = text.Edges;
        return new Bounds(left / PointsPerMillimetre, (page.Height - top) / PointsPerMillimetre, right / PointsPerMillimetre, (page.Height - bottom) / PointsPerMillimetre);
    }

    // Text on a page of cards stands on a card, or it is the foot between them; elsewhere between the margins.
    private static bool IsInRoom(Bounds text, IReadOnlyList<Bounds> cards, UglyToad.PdfPig.Content.Page page)
    {
        var (width, height) = (page.Width / PointsPerMillimetre, page.Height / PointsPerMillimetre);
        var side = cards.Count > 0 ? 3 : width > height ? 12 : 18;
        return text.Left >= side - Play && text.Right <= width - side + Play && text.Top >= 2 && text.Bottom <= height - 2
            && (cards.Count == 0 || cards.Any(card => Holds(card, text)) || cards.All(card => IsApart(card, text)));
    }

    private static IReadOnlyList<Bounds> Rooms(string name, SheetOptions options)
    {
        var template = name == "handling-cards.pdf" ? CardTemplates.Of(CardSize.A6.Name)
            : options.Cards.FirstOrDefault(card => name == $"cards-{card.Name}.pdf");
        if (template is null)
        {
            return [];
        }

        var grid = CardGrid.For(options.Paper, template.Held, template.LaminationMargin.Millimeters);
        return [.. Enumerable.Range(0, grid.PerPage).Select(grid.Slot)];
    }

    private static bool Holds(Bounds card, Bounds text) =>
        text.Left >= card.Left - Play && text.Right <= card.Right + Play && text.Top >= card.Top - Play && text.Bottom <= card.Bottom + Play;

    private static bool IsApart(Bounds card, Bounds text) =>
        text.Right <= card.Left + Play || text.Left >= card.Right - Play || text.Bottom <= card.Top + Play || text.Top >= card.Bottom - Play;
}
