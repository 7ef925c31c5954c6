using StudioKit.Sheets.Fonts;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>A page of a printed file by what stands on it, read off the file.</summary>
internal sealed class PrintedPage
{
    // Words and drawings stand between the line under the head, 16 mm down, and that over the foot, 15.5 mm up; margins as the sheets have them.
    private const double Head = 17;
    private const double Foot = 16.5;
    private const double Top = 22;
    private const double Bottom = 20;

    private PrintedPage(Page page)
    {
        Number = page.Number;
        var height = page.Height * TextMeter.MillimetresPerPoint;
        var words = page.GetWords().ToList();
        Title = string.Join(' ', words.Where(word => Down(word.BoundingBox.Bottom) < Head && word.BoundingBox.Left > page.Width / 2).Select(word => word.Text));
        IsBlank = page.Letters.Count == 0;
        IsOfCards = page.Text.Contains("Cut at the marks, punch", StringComparison.Ordinal);
        var reached = page.Letters.Select(letter => letter.BoundingBox.Bottom)
            .Concat(page.Paths.Select(path => path.GetBoundingRectangle()).Where(box => box is not null).Select(box => box!.Value.Bottom))
            .Select(Down).Where(down => down > Head && down < height - Foot);
        Full = (reached.DefaultIfEmpty(Top).Max() - Top) / (height - Top - Bottom);

        double Down(double up) => height - (up * TextMeter.MillimetresPerPoint);
    }

    public int Number { get; }

    /// <summary>What its head says on the right: the document or chapter that it belongs to.</summary>
    public string Title { get; }

    public bool IsBlank { get; }

    public bool IsOfCards { get; }

    /// <summary>How far down its words and drawings reach, of what they may [1].</summary>
    public double Full { get; }

    public static IReadOnlyList<PrintedPage> Of(SheetFile file)
    {
        using var document = PdfDocument.Open(file.Content.ToArray());
        return [.. document.GetPages().Select(page => new PrintedPage(page))];
    }

    /// <summary>Pages less than a quarter full that end neither a document nor a chapter; cards, templates and blank backs are as full as they are.</summary>
    public static IEnumerable<string> NearlyEmpty(SheetFile file)
    {
        var pages = Of(file);
        return pages.Zip(pages.Skip(1))
            .Where(pair => pair.First is { Full: < 0.25, IsBlank: false, IsOfCards: false } page && !page.Title.EndsWith("Templates", StringComparison.Ordinal) && pair.Second.Title == page.Title)
            .Select(pair => FormattableString.Invariant($"{file.Name}, page {pair.First.Number} of '{pair.First.Title}' is {100 * pair.First.Full:0} % full"));
    }
}
