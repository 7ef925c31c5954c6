using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Lays a document out on pages with header and footer.</summary>
internal static class Paginator
{
    /// <summary>Lays a document out that stands alone.</summary>
    public static LaidDocument Lay(SheetDocument document) => Chapter(document).Alone(document.Stamp);

    /// <summary>Lays a document out whose page numbers are not known yet.</summary>
    public static Chapter Chapter(SheetDocument document)
    {
        var problems = new List<string>();
        var bodies = Flow(new Stack(document.Blocks), document.Setup.Body, problems);
        return new Chapter(document.Title, bodies.Count, run => [.. bodies.Select((body, i) => Finish(document, body, run.Says(i)))], problems) { OneSided = document.OneSided };
    }

    /// <summary>Fills pages until nothing is left.</summary>
    public static List<Fit> Flow(Stack flow, Bounds room, List<string> problems)
    {
        var pages = new List<Fit>();
        Stack? begun = null;
        for (Stack? rest = flow; rest is not null;)
        {
            var fit = rest.Fit(room.Width, room.Height);
            fit = fit.Problem is null ? fit : rest.Force(room.Width, room.Height);
            if (fit.Problem is not null)
            {
                // Even an empty page does not hold it: say so on the sheet in its place, and go on.
                problems.Add(fit.Problem);
                var told = rest.ReplaceFirst(new Caution(fit.Problem, "Left out: it does not fit on this paper"));
                var again = begun?.Ending(rest, told);
                if (again is not null)
                {
                    // The few words may have room on the page that what is left out had none on.
                    pages.RemoveAt(pages.Count - 1);
                    begun = null;
                }

                rest = again ?? told;
                continue;
            }

            pages.Add(fit);
            begun = rest;
            rest = (Stack?)fit.Rest;
        }

        return pages;
    }

    /// <summary>Puts a filled page between its header and its footer.</summary>
    public static Page Finish(SheetDocument document, Fit body, string number)
    {
        var room = document.Setup.Body;
        return new Page(
            document.Setup.Width,
            document.Setup.Height,
            [
                .. PageFrame.Marks(document, number),
                .. body.Marks.Under(Similarity.Shift(room.Left, room.Top)),
            ])
        {
            Bookmarks = [.. body.Bookmarks.Select(bookmark => bookmark with { Y = bookmark.Y + room.Top })],
        };
    }
}
