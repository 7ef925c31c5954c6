using StudioKit.Planning;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>All documents of a plan bound into one, behind a cover and a table of contents.</summary>
internal static class FieldBook
{
    private const string Title = "Field book";

    // The outline has every heading, the printed contents only chapters and what is directly under them.
    private const int DeepestInContents = 2;

    public static LaidDocument Bind(Plan plan, IReadOnlyList<Chapter> chapters, Stamp stamp, Paper paper)
    {
        var document = new SheetDocument(Title, stamp, new PageSetup(paper), []);
        var cover = Paginator.Chapter(document with { Blocks = [new BookCover(plan, stamp, chapters)] });
        var contents = Contents.Of(document, Entries(chapters), cover.PageCount);
        Chapter[] all = [cover, contents, .. chapters];
        var count = all.Sum(chapter => chapter.PageCount);
        var pages = new List<Page>();
        foreach (var chapter in all)
        {
            var finished = chapter.Finish(new PageRun(pages.Count + 1, count));
            pages.AddRange(chapter == cover || chapter == contents ? finished : Under(chapter, finished));
        }

        return new LaidDocument(
            new PagedDocument($"{stamp.KitName}: {Title}", stamp.Date, pages), [.. chapters.SelectMany(chapter => chapter.Problems)]);
    }

    private static List<(Bookmark Entry, int Page)> Entries(IReadOnlyList<Chapter> chapters)
    {
        var entries = new List<(Bookmark, int)>();
        var before = 0;
        foreach (var chapter in chapters)
        {
            var pages = Under(chapter, chapter.Finish(new PageRun(1, chapter.PageCount)));
            entries.AddRange(pages.SelectMany((page, i) => page.Bookmarks
                .Where(bookmark => bookmark.Level <= DeepestInContents)
                .Select(bookmark => (bookmark, before + i + 1))));
            before += chapter.PageCount;
        }

        return entries;
    }

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
