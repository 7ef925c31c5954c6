using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Cards;

/// <summary>A black tab at the outer edge, at another height for each set-up, so that a ring is opened at the right place by its edge.</summary>
/// <param name="SetUp">What it says.</param>
/// <param name="Place">Which of the set-ups it is, counted from 0.</param>
/// <param name="Count">How many set-ups the ring has.</param>
internal sealed record CardTab(string SetUp, int Place, int Count)
{
    private const double Tallest = 30;
    private const double FromText = 0.6;

    // A cut beside the mark must not leave a white line at the edge.
    private const double Bleed = 1;
    private const double LeastForText = 2.4;
    private const double TextPt = 7;

    /// <summary>The tab's marks on one side of a card.</summary>
    /// <param name="edge">Where the card ends [mm].</param>
    /// <param name="outward">1 where the edge is on the right, −1 where it is on the left.</param>
    /// <param name="margin">Between the edge and what is printed [mm].</param>
    /// <param name="top">Where tabs may begin [mm].</param>
    /// <param name="bottom">Where they must end [mm].</param>
    public IEnumerable<Primitive> Marks(double edge, int outward, double margin, double top, double bottom)
    {
        var (height, width) = (Math.Min(Tallest, (bottom - top) / Count), margin - FromText);
        if (width <= 0 || height <= 0)
        {
            yield break;
        }

        var (inner, outer) = (edge - (outward * width), edge + (outward * Bleed));
        var box = new Bounds(Math.Min(inner, outer), top + (Place * height), Math.Max(inner, outer), top + ((Place + 1) * height));
        yield return Polygon.Rectangle(box, null, Fill.Black);
        if (width >= LeastForText)
        {
            yield return new Label(
                new Point(edge - (outward * width / 2), (box.Top + box.Bottom) / 2), TextWrap.Shortened(SetUp, height - 2, TextPt, TextWeight.Bold), TextPt,
                TextAnchor.Middle, TextRise.Middle, -outward * Math.PI / 2, TextWeight.Bold, Fill.White)
            { Tag = Tag.Ornament };
        }
    }
}
