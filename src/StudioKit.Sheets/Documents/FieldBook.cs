using StudioKit.Planning;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>All documents of a plan bound into one, behind a page that says what it is and what is in it.</summary>
internal static class FieldBook
{
    private const string Title = "Field book";

    // The outline has every heading, the printed contents only chapters and what is directly under them.
    private const int DeepestInContents = 2;

    public static LaidDocument Bind(Plan plan, IReadOnlyList<Chapter> chapters, Stamp stamp, Paper paper)
    {
        var setup = new PageSetup(paper);
        var document = new SheetDocument(Title, stamp, setup, [.. BookCover.Of(plan, stamp)]);

        // The length of the table of contents depends on how many lines it has, and not on the numbers in them.
        var before = Contents.Of(document, Entries(chapters, Places(chapters, 0), 0)).PageCount;
        var places = Places(chapters, before);
        var front = Contents.Of(document, Entries(chapters, places, before));
        var count = places.Count == 0 ? before : places[^1] + Span(chapters[^1]) - 1;
        var pages = new List<Page>(front.Finish(new PageRun(1, count)));
        foreach (var (chapter, place) in chapters.Zip(places))
        {
            pages.AddRange(Enumerable.Repeat(Blank(setup), place - 1 - pages.Count));
            foreach (var page in Under(chapter, chapter.Finish(new PageRun(place, count) { Step = chapter.OneSided ? 2 : 1 })))
            {
                pages.AddRange(chapter.OneSided && pages.Count >= place ? [Blank(setup), page] : [page]);
            }
        }

        return new LaidDocument(
            new PagedDocument($"{stamp.KitName}: {Title}", stamp.Date, pages), [.. front.Problems, .. chapters.SelectMany(chapter => chapter.Problems)]);
    }

    // What is cut apart begins on a right-hand page, which has an odd number; what is cut out has blank backs, the last one too.
    private static List<int> Places(IReadOnlyList<Chapter> chapters, int before)
    {
        var (places, next, backMustBeBlank) = (new List<int>(), before + 1, false);
        foreach (var chapter in chapters)
        {
            next += (chapter.StartsRight || chapter.OneSided || backMustBeBlank) && next % 2 == 0 ? 1 : 0;
            places.Add(next);
            next += Span(chapter);
            backMustBeBlank = chapter.OneSided;
        }

        return places;
    }

    private static int Span(Chapter chapter) => chapter.OneSided ? (2 * chapter.PageCount) - 1 : chapter.PageCount;

    private static Page Blank(PageSetup setup) => new(setup.Width, setup.Height, []);

    private static List<(Bookmark Entry, int Page)> Entries(IReadOnlyList<Chapter> chapters, IReadOnlyList<int> places, int front) =>
    [
        .. chapters.Zip(places).SelectMany(placed => Under(placed.First, placed.First.Finish(new PageRun(1, placed.First.PageCount)))
            .SelectMany((page, i) => page.Bookmarks
                .Where(bookmark => bookmark.Level <= (placed.First.StartsRight ? 1 : DeepestInContents))
                .Select(bookmark => (bookmark, placed.Second + (i * (placed.First.OneSided ? 2 : 1)) - front)))),
    ];

    // A chapter's own first heading gives way to the chapter's title; all other headings come under it.
    private static List<Page> Under(Chapter chapter, IReadOnlyList<Page> pages) => [.. pages.Select((page, i) => page with
    {
        Bookmarks =
        [
            .. i == 0 ? (Bookmark[])[new Bookmark(chapter.Title, 1, 0)] : [],
            .. page.Bookmarks.Where(bookmark => bookmark.Level > 1 || !HasTitleHeading(pages)).Select(bookmark => bookmark with { Level = Math.Max(2, bookmark.Level) }),
        ],
    })];

    private static bool HasTitleHeading(IReadOnlyList<Page> pages) => pages.Sum(page => page.Bookmarks.Count(bookmark => bookmark.Level == 1)) == 1;
}
