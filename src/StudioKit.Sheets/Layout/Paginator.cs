using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Lays a document out on pages, with header, footer and table of contents.</summary>
internal static class Paginator
{
    public static LaidDocument Lay(SheetDocument document)
    {
        var problems = new List<string>();
        var bodies = Flow(new Stack(document.Blocks), document.Setup.Body, problems);
        var contents = document.WithContents ? Contents(document, bodies) : [];
        List<Fit> all = [.. contents, .. bodies];
        var pages = all.Select((body, i) => Finish(document, body, i + 1, all.Count)).ToList();
        if (contents.Count > 0)
        {
            Link(pages, contents, bodies, document.Setup.Body);
        }

        return new LaidDocument(new PagedDocument($"{document.Stamp.KitName}: {document.Title}", document.Stamp.Date, pages), problems);
    }

    private static List<Fit> Flow(Stack flow, Bounds room, List<string> problems)
    {
        var pages = new List<Fit>();
        for (Stack? rest = flow; rest is not null;)
        {
            var fit = rest.Fit(room.Width, room.Height);
            fit = fit.Problem is null ? fit : rest.Force(room.Width, room.Height);
            if (fit.Problem is not null)
            {
                // Even an empty page does not hold it: say so on the sheet in its place, and go on.
                problems.Add(fit.Problem);
                rest = rest.ReplaceFirst(new Caution(fit.Problem, "Left out: it does not fit on this paper"));
                continue;
            }

            pages.Add(fit);
            rest = (Stack?)fit.Rest;
        }

        return pages;
    }

    private static List<Fit> Contents(SheetDocument document, List<Fit> bodies)
    {
        // The contents' own length shifts the numbers but not the number of lines, so a first setting tells the length.
        var length = Flow(Entries(bodies, 0), document.Setup.Body, []).Count;
        return Flow(Entries(bodies, length), document.Setup.Body, []);
    }

    private static Stack Entries(List<Fit> bodies, int shift) => new(
        [
            new ContentsHeading(),
            .. bodies.SelectMany((body, i) => body.Bookmarks.Select(bookmark =>
                new ContentsEntry(bookmark.Title, bookmark.Level, i + 1 + shift))),
        ],
        0.5);

    private static Page Finish(SheetDocument document, Fit body, int number, int count)
    {
        var room = document.Setup.Body;
        return new Page(
            document.Setup.Width,
            document.Setup.Height,
            [
                .. PageFrame.Marks(document, number, count),
                .. body.Marks.Select(mark => mark.Under(Similarity.Shift(room.Left, room.Top))),
            ])
        {
            Bookmarks = [.. body.Bookmarks.Select(bookmark => bookmark with { Y = bookmark.Y + room.Top })],
        };
    }

    private static void Link(List<Page> pages, List<Fit> contents, List<Fit> bodies, Bounds room)
    {
        var targets = new Queue<int>(bodies.SelectMany((body, i) => body.Bookmarks.Select(_ => contents.Count + i + 1)));
        for (var i = 0; i < contents.Count; i++)
        {
            var titles = contents[i].Marks.OfType<Label>().Where(label => label.Anchor == TextAnchor.End);
            pages[i] = pages[i] with
            {
                Links = [.. titles.Select(number => new PageLink(
                    new Bounds(room.Left, room.Top + number.At.Y - 3.5, room.Right, room.Top + number.At.Y + 1), targets.Dequeue()))],
            };
        }
    }
}
