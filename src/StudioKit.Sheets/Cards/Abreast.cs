using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>Two small blocks on one level, the first at the left edge, the second at the right; under each other where the width does not hold both.</summary>
internal sealed record Abreast(Block First, Block Second) : Block
{
    private const double Gap = 2;

    public override Fit Fit(double width, double height)
    {
        var (first, second) = (First.Fit(width, double.PositiveInfinity), Second.Fit(width, double.PositiveInfinity));
        if ((First.Breadth ?? Cover(first).Width) + Gap + (Second.Breadth ?? Cover(second).Width) > width)
        {
            return new Stack([First, Second], Gap).Fit(width, height);
        }

        return Layout.Fit.WholeOrNothing(this, "What stands side by side", Math.Max(first.Height, second.Height), height, () =>
        {
            var (left, right) = (-Cover(first).Left, width - Cover(second).Right);
            return [.. first.Marks.Under(Similarity.Shift(left, 0)), .. second.Marks.Under(Similarity.Shift(right, 0))];
        });
    }

    private static Bounds Cover(Fit fit) => new Drawing("", "", fit.Marks).Bounds;
}
