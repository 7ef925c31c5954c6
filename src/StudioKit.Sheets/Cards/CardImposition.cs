using StudioKit.Kits.Cards;
using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Cards;

/// <summary>Puts several cards on a page, with marks to cut along.</summary>
internal static class CardImposition
{
    private const double MarkGap = 1;
    private const double MarkLength = 2;

    public static Chapter Lay(string title, IReadOnlyList<Card> cards, CardTemplate template, Paper paper, Stamp stamp)
    {
        var grid = CardGrid.For(paper, template.Held, template.LaminationMargin.Millimeters);
        if (grid.PerPage == 0)
        {
            var problem = $"A card of {PlanFormat.Rectangle(template.Held.Width, template.Held.Height)} does not fit on {paper} paper with room to cut.";
            return Paginator.Chapter(new SheetDocument(title, stamp, new PageSetup(paper), [new Caution(problem)])) with { Problems = [problem] };
        }

        var sheets = cards.Chunk(grid.PerPage).ToList();
        var duplex = cards.Any(card => card.Back is not null);
        var pages = sheets.Count * (duplex ? 2 : 1);
        return new Chapter(title, pages, run => [.. Enumerable.Range(0, pages).Select(i => Side(grid, template, sheets, i, duplex, stamp, run))], []);
    }

    private static Page Side(CardGrid grid, CardTemplate template, List<Card[]> sheets, int index, bool duplex, Stamp stamp, PageRun run)
    {
        var foot = Foot(grid, template, duplex, stamp, run.Says(index));
        return !duplex ? FrontPage(grid, sheets[index], foot)
            : index % 2 == 0 ? FrontPage(grid, sheets[index / 2], foot)
            : BackPage(grid, sheets[index / 2], foot);
    }

    private static Page FrontPage(CardGrid grid, Card[] cards, Label foot) => new(
        grid.Page.Width,
        grid.Page.Height,
        new DrawnAnew(() =>
        [
            .. cards.SelectMany((card, i) => card.Front.Under(grid.Front(i)).Marks),
            .. cards.SelectMany((_, i) => CropMarks(grid.Slot(i)).Select(mark => mark with { Tag = Tag.CutMark })),
            foot,
        ]))
    {
        Bookmarks = [.. cards.Select((card, i) => new Bookmark(card.Front.Title, 1, grid.Slot(i).Top))],
    };

    private static Page BackPage(CardGrid grid, Card[] cards, Label foot) => new(
        grid.Page.Width,
        grid.Page.Height,
        new DrawnAnew(() =>
        [
            .. cards.SelectMany((card, i) => card.Back is null ? [] : card.Back.Under(grid.Back(i)).Marks),
            .. cards.SelectMany((_, i) => CropMarks(grid.BackSlot(i)).Select(mark => mark with { Tag = Tag.CutMark })),
            foot,
        ]));

    private static IEnumerable<Line> CropMarks(Bounds card)
    {
        foreach (var (x, outX) in new[] { (card.Left, -1), (card.Right, 1) })
        {
            foreach (var (y, outY) in new[] { (card.Top, -1), (card.Bottom, 1) })
            {
                var corner = new Point(x, y);
                yield return new Line(
                    corner.Plus(outX * MarkGap, 0), corner.Plus(outX * (MarkGap + MarkLength), 0), Stroke.Thin);
                yield return new Line(
                    corner.Plus(0, outY * MarkGap), corner.Plus(0, outY * (MarkGap + MarkLength)), Stroke.Thin);
            }
        }
    }

    private static Label Foot(CardGrid grid, CardTemplate template, bool duplex, Stamp stamp, string number)
    {
        var sides = duplex ? "both sides, flip on the long edge, " : "";
        var seal = $"{PlanFormat.Millimetres(template.LaminationMargin)} of seal";
        var text = $"Print {sides}at 100 %. Cut at the marks, punch, laminate with {seal} around, punch again. {stamp.Origin}. {number}";
        return new Label(new Point(grid.Page.Width / 2, grid.Page.Height - 4), text, TypeScale.Smallest, TextAnchor.Middle) { Tag = Tag.Footer };
    }
}
