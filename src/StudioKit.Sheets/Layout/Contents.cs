using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A table of contents whose every line leads to its page.</summary>
internal static class Contents
{
    /// <summary>Lays the table out.</summary>
    /// <param name="document">Whose title, stamp and paper the pages bear; its blocks are not used.</param>
    /// <param name="entries">What the lines say, each with its page counted from the first page behind the table.</param>
    /// <param name="before">How many pages stand before the table.</param>
    public static Chapter Of(SheetDocument document, IReadOnlyList<(Bookmark Entry, int Page)> entries, int before)
    {
        // The table's own length shifts the numbers but not the number of lines, so a first setting tells the length.
        var length = Flow(document, entries, 0).Count;
        var first = before + length;
        var bodies = Flow(document, entries, first);
        return new Chapter("Contents", length, run => Pages(document, bodies, entries, first, run), []);
    }

    private static List<Fit> Flow(SheetDocument document, IReadOnlyList<(Bookmark Entry, int Page)> entries, int shift)
    {
        var contents = new Tag(TagKind.Contents);
        return Paginator.Flow(
            new Stack([new ContentsHeading(), .. entries.Select(entry => new ContentsEntry(entry.Entry.Title, entry.Entry.Level, entry.Page + shift, contents))], 0.5),
            document.Setup.Body,
            []);
    }

    private static List<Page> Pages(
        SheetDocument document, List<Fit> bodies, IReadOnlyList<(Bookmark Entry, int Page)> entries, int first, PageRun run)
    {
        var pages = bodies.Select((body, i) => Paginator.Finish(document, body, run.Says(i))).ToList();
        var targets = new Queue<int>(entries.Select(entry => entry.Page + first));
        var room = document.Setup.Body;
        for (var i = 0; i < pages.Count; i++)
        {
            var numbers = bodies[i].Marks.OfType<Label>().Where(label => label.Anchor == TextAnchor.End);
            pages[i] = pages[i] with
            {
                Links = [.. numbers.Select(number => new PageLink(
                    new Bounds(room.Left, room.Top + number.At.Y - 3.5, room.Right, room.Top + number.At.Y + 1), targets.Dequeue()) { Tag = number.Tag })],
            };
        }

        return pages;
    }
}
