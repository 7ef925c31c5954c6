using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>The first pages of a book: a table of contents in columns, whose every line leads to its page, under what the document says.</summary>
internal static class Contents
{
    private const double HeadingPt = 13;
    private const double LineGap = 0.4;

    /// <summary>Lays the pages out.</summary>
    /// <param name="document">Whose title, stamp and paper the pages bear; its blocks stand over the table.</param>
    /// <param name="entries">What the lines say, each with its page counted from the first page behind the table.</param>
    public static Chapter Of(SheetDocument document, IReadOnlyList<(Bookmark Entry, int Page)> entries)
    {
        // The table's own length shifts the numbers but not the number of lines, so a first setting tells the length.
        var length = Flow(document, entries, 0, []).Count;
        var problems = new List<string>();
        var bodies = Flow(document, entries, length, problems);
        return new Chapter("Contents", length, run => Pages(document, bodies, entries, length, run), problems);
    }

    private static List<Fit> Flow(SheetDocument document, IReadOnlyList<(Bookmark Entry, int Page)> entries, int shift, List<string> problems)
    {
        var contents = new Tag(TagKind.Contents);
        var lines = new Stack([.. entries.Select(entry => new ContentsEntry(entry.Entry.Title, entry.Entry.Level, entry.Page + shift, contents))], LineGap);
        return Paginator.Flow(
            new Stack([.. document.Blocks, new Heading("Contents", 2) { OwnSizePt = HeadingPt }, new InColumns(lines)]),
            document.Setup.Body,
            problems);
    }

    private static List<Page> Pages(SheetDocument document, List<Fit> bodies, IReadOnlyList<(Bookmark Entry, int Page)> entries, int length, PageRun run)
    {
        var targets = new Queue<int>(entries.Select(entry => entry.Page + length));
        return [.. bodies.Select((body, i) => Paginator.Finish(document, body, run.Says(i))).Select(page => page with { Links = [.. Links(page, targets)] })];
    }

    // The whole line leads there, from its first word to its number.
    private static IEnumerable<PageLink> Links(Page page, Queue<int> targets) => page.Marks.OfType<Label>()
        .Where(label => label.Tag is { Kind: TagKind.Link })
        .GroupBy(label => label.Tag)
        .Select(line => new PageLink(line.Select(label => label.Bounds).Aggregate((one, other) => one.With(other)), targets.Dequeue()) { Tag = line.Key });
}
