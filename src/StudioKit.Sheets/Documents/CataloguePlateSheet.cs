using System.Globalization;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;

namespace StudioKit.Sheets.Documents;

/// <summary>Catalogue plates: portraits on white at true scale, each with its bar and what the log says of it.</summary>
public static class CataloguePlateSheet
{
    private const double Side = 15;
    private const double NamePt = 9;
    private const double CaptionPt = 7;
    private const double UnderPicture = 1.5;
    private const double BetweenTextAndBar = 3;
    private const double BarHeight = 0.7;

    /// <summary>Prints the plates.</summary>
    /// <param name="book">What goes on them.</param>
    /// <returns>A PDF file; the same plates give the same bytes.</returns>
    public static SheetFile Write(PlateBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        var pages = book.Pages.Select((figures, i) => new Page(book.WidthMm, book.HeightMm, [.. Marks(book, figures), .. Foot(book, i + 1)])
        {
            Bookmarks = [new Bookmark(string.Create(CultureInfo.InvariantCulture, $"Plate {i + 1}"), 1, 0)],
        }).ToList();
        return new SheetFile("plates.pdf", PdfWriter.Write(new PagedDocument(book.Title, book.Date, pages)), []);
    }

    private static IEnumerable<Primitive> Marks(PlateBook book, IReadOnlyList<PlateFigure> figures)
    {
        yield return new Label(new Point(Side, 10), book.Title, TypeScale.Small, Weight: TextWeight.Bold);
        foreach (var mark in figures.SelectMany(Figure))
        {
            yield return mark;
        }
    }

    private static IEnumerable<Primitive> Figure(PlateFigure figure)
    {
        yield return new Picture(figure.Place, figure.Jpeg, figure.Name);
        var top = figure.Place.Bottom + UnderPicture;
        var right = figure.CaptionLeft + figure.CaptionWidth;
        var barLength = figure.BarLabel.Length == 0 ? 0 : figure.BarLength;
        if (barLength > 0)
        {
            yield return Polygon.Rectangle(new Bounds(right - barLength, top + 1, right, top + 1 + BarHeight), null, Fill.Black);
        }

        var barText = string.Join(", ", new[] { figure.BarLabel, figure.ScaleText }.Where(text => text.Length > 0));
        yield return new Label(new Point(right, top + 1 + BarHeight + 0.8 + TypeScale.Baseline(CaptionPt)), barText, CaptionPt, TextAnchor.End);

        var barRoom = Math.Max(barLength, TextMeter.Width(barText, CaptionPt, TextWeight.Regular)) + BetweenTextAndBar;
        var width = figure.CaptionWidth - barRoom;
        foreach (var label in Name(figure, top, width))
        {
            yield return label;
        }

        var lines = figure.Caption.Select(line => TextWrap.Shortened(line, width, CaptionPt, TextWeight.Regular)).ToList();
        foreach (var line in TypeScale.Set(lines, figure.CaptionLeft, CaptionPt, TextWeight.Regular, top: top + TypeScale.LineHeight(NamePt)))
        {
            yield return line;
        }
    }

    // "cf." and its like stand upright within a slanted name.
    private static IEnumerable<Label> Name(PlateFigure figure, double top, double width)
    {
        var x = figure.CaptionLeft;
        var shown = TextWrap.Shortened(figure.Name, width, NamePt, TextWeight.Regular);
        foreach (var word in shown.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            yield return new Label(new Point(x, top + TypeScale.Baseline(NamePt)), word, NamePt) { Slanted = figure.IsScientific && !word.EndsWith('.') };
            x += TextMeter.Width(word + " ", NamePt, TextWeight.Regular);
        }
    }

    private static IEnumerable<Primitive> Foot(PlateBook book, int number)
    {
        var y = book.HeightMm - 8;
        if (number == book.Pages.Count && book.Note.Length > 0)
        {
            yield return new Label(new Point(Side, y - TypeScale.LineHeight(CaptionPt)), TextWrap.Shortened(book.Note, book.WidthMm - (2 * Side), CaptionPt, TextWeight.Regular), CaptionPt);
        }

        yield return new Label(new Point(Side, y), book.Scale, CaptionPt);
        yield return new Label(
            new Point(book.WidthMm - Side, y),
            string.Create(CultureInfo.InvariantCulture, $"Print at 100 %. {(book.Date is { } day ? $"{day:yyyy-MM-dd}, p" : "P")}age {number} of {book.Pages.Count}"),
            CaptionPt,
            TextAnchor.End);
    }
}
