using StudioKit.Kits.Cards;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Cards;

/// <summary>One side of a card: where blocks may stand, the hole, the rule along the edge and the foot.</summary>
/// <param name="Template">What the card is to look like.</param>
/// <param name="Stamp">Where it came from.</param>
/// <param name="IsBack">True for the back, on which the hole is on the other hand.</param>
/// <param name="HasRule">Whether a rule runs along the edge away from the hole.</param>
internal sealed record CardSide(CardTemplate Template, Stamp Stamp, bool IsBack, bool HasRule)
{
    private const double FootHeight = 3.4;
    private const double WidestGap = 2;
    private const double GapsInHeight = 74;

    // Paper that must stand between the hole and the card's edge, and between the hole and what is printed.
    private const double HoleFromEdge = 5;
    private const double HoleClearance = 1.5;

    /// <summary>The tab at the edge with the hole; none on cards that belong to no set-up.</summary>
    public CardTab? Tab { get; init; }

    private double Width => Template.Held.Width.Millimeters;

    private double Height => Template.Held.Height.Millimeters;

    private double Margin => Template.Margin.Millimeters;

    // An A6 card has the widest gaps, smaller ones have gaps in proportion; a back is packed closer.
    private double Gap => Math.Min(WidestGap, Height / GapsInHeight) * (IsBack ? 0.6 : 1);

    private double Hole => Template.Hole.Millimeters;

    /// <summary>Where blocks may stand, the hole left out of account.</summary>
    public Bounds Room => new(
        HasRule && !IsBack ? MillimetreRule.Strip : Margin,
        Margin,
        Width - (HasRule && IsBack ? MillimetreRule.Strip : Margin),
        Height - Margin - FootHeight);

    /// <summary>The hole keeps a corner square of this side for itself [mm].</summary>
    public double BelowHole => Hole == 0 ? 0 : HoleFromEdge + Hole + HoleClearance;

    /// <summary>Whether what ends at a height ends within the room, rounding left out of account.</summary>
    public bool Holds(double bottom) => bottom <= Room.Bottom + 1e-6;

    /// <summary>Stacks blocks from the top.</summary>
    /// <returns>Where the lowest ends, and the marks.</returns>
    public (double Bottom, IReadOnlyList<Primitive> Marks) Stack(IReadOnlyList<Block> blocks)
    {
        var set = new List<(Fit Fit, double Left, double Top)>();
        var y = Room.Top;
        var clear = Math.Max(0, BelowHole - Margin);
        foreach (var block in blocks.OrderBy(block => block is AtFoot))
        {
            var narrow = y < BelowHole ? clear : 0;
            var fit = block.Fit(Room.Width - narrow, double.PositiveInfinity);
            y = block is AtFoot ? Math.Max(y, Room.Bottom - fit.Height) : y;
            set.Add((fit, Room.Left + (IsBack ? narrow : 0), y));
            y += fit.Height + Gap;
        }

        return (y - Gap, new DrawnLater(() => [.. set.SelectMany(one => one.Fit.Marks.Under(Similarity.Shift(one.Left, one.Top)))]));
    }

    /// <summary>The side with its marks, hole, rule and foot.</summary>
    public Drawing Finish(string title, string description, IReadOnlyList<Primitive> marks) => new(
        title,
        description,
        new DrawnAnew(() => [.. HasRule ? MillimetreRule.Marks(Width, Height, atRight: IsBack) : [], .. TabMarks(), .. HoleMarks(), .. MarkLists.Made(marks), Foot()]));

    private IEnumerable<Primitive> TabMarks() =>
        Tab?.Marks(IsBack ? 0 : Width, IsBack ? -1 : 1, Margin, Math.Max(BelowHole, Margin), Height - Margin - FootHeight) ?? [];

    private IEnumerable<Primitive> HoleMarks()
    {
        if (Hole == 0)
        {
            yield break;
        }

        var fromEdge = HoleFromEdge + (Hole / 2);
        var centre = new Point(IsBack ? fromEdge : Width - fromEdge, fromEdge);
        yield return new Circle(centre, Hole / 2, Stroke.Thin);
        yield return new Line(centre.Plus(-1, 0), centre.Plus(1, 0), Stroke.Thin);
        yield return new Line(centre.Plus(0, -1), centre.Plus(0, 1), Stroke.Thin);
    }

    private Label Foot()
    {
        // Date and hash must stand; a long name gives way.
        var stamped = $", {Stamp.Origin}";
        var room = Room.Width - TextMeter.Width(stamped, TypeScale.Smallest, TextWeight.Regular);
        var name = TextWrap.Shortened(Stamp.KitName, room, TypeScale.Smallest, TextWeight.Regular);
        return new Label(new Point(Room.Left, Height - Margin), name + stamped, TypeScale.Smallest) { Tag = Tag.Footer };
    }
}
