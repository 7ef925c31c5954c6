using StudioKit.Kits.Cards;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>How the cards of one format stand on an upright page, so that both sides register when it is turned over its long edge.</summary>
/// <param name="Page">The paper.</param>
/// <param name="Card">The cards, as they are held.</param>
/// <param name="Gap">Between cards: twice the seal that a laminating pouch keeps around each [mm].</param>
/// <param name="Turned">True where cards lie on their side because more fit so.</param>
/// <param name="Columns">Cards beside each other.</param>
/// <param name="Rows">Cards under each other.</param>
internal sealed record CardGrid(PageSetup Page, CardSize Card, double Gap, bool Turned, int Columns, int Rows)
{
    // Room for the crop marks of neighbours, which must not touch.
    private const double LeastGap = 7;

    private const double PageMargin = 8.5;

    public int PerPage => Columns * Rows;

    private double SlotWidth => Turned ? Card.Height.Millimeters : Card.Width.Millimeters;

    private double SlotHeight => Turned ? Card.Width.Millimeters : Card.Height.Millimeters;

    public static CardGrid For(Paper paper, CardSize card, double laminationMargin)
    {
        var gap = Math.Max(LeastGap, 2 * laminationMargin);
        var upright = With(paper, card, gap, turned: false);
        var turned = With(paper, card, gap, turned: true);
        return turned.PerPage > upright.PerPage ? turned : upright;
    }

    /// <summary>The trimmed outline of a card's front on the page.</summary>
    public Bounds Slot(int index)
    {
        var left = (Page.Width - Span(Columns, SlotWidth)) / 2;
        var top = (Page.Height - Span(Rows, SlotHeight)) / 2;
        var x = left + (index % Columns * (SlotWidth + Gap));
        var y = top + (index / Columns * (SlotHeight + Gap));
        return new Bounds(x, y, x + SlotWidth, y + SlotHeight);
    }

    /// <summary>The same card's outline seen on the back of the page.</summary>
    public Bounds BackSlot(int index)
    {
        var front = Slot(index);
        return front with { Left = Page.Width - front.Right, Right = Page.Width - front.Left };
    }

    /// <summary>Moves a front from its own origin to its place.</summary>
    public Similarity Front(int index)
    {
        var slot = Slot(index);
        return Turned ? new Similarity(1, Math.PI / 2, slot.Right, slot.Top) : Similarity.Shift(slot.Left, slot.Top);
    }

    /// <summary>Moves a back from its own origin to its place; a front that lies on its right side needs a back on its left.</summary>
    public Similarity Back(int index)
    {
        var slot = BackSlot(index);
        return Turned ? new Similarity(1, -Math.PI / 2, slot.Left, slot.Bottom) : Similarity.Shift(slot.Left, slot.Top);
    }

    private static CardGrid With(Paper paper, CardSize card, double gap, bool turned)
    {
        var page = new PageSetup(paper);
        var grid = new CardGrid(page, card, gap, turned, 0, 0);
        return grid with
        {
            Columns = Count(page.Width, grid.SlotWidth, gap),
            Rows = Count(page.Height, grid.SlotHeight, gap),
        };
    }

    private static int Count(double paper, double card, double gap) =>
        Math.Max(0, (int)Math.Floor((paper - (2 * PageMargin) + gap) / (card + gap)));

    private double Span(int count, double card) => (count * card) + ((count - 1) * Gap);
}
