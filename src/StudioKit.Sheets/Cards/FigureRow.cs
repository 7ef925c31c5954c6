using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>Big figures beside each other, as large as the width lets them be.</summary>
internal sealed record FigureRow(IReadOnlyList<BigFigure> Figures, double LargestPt, double WordPt = 7.5) : Block
{
    /// <summary>Settings are never smaller than this, however many there are.</summary>
    public const double SmallestPt = 18;

    private const double Gap = 5;

    public override Fit Fit(double width, double height)
    {
        var size = Size(width);
        var free = (width - Figures.Sum(figure => figure.Width(size))) / Math.Max(1, Figures.Count - 1);
        return Layout.Fit.WholeOrNothing(this, "The row of settings", BigFigure.Height(size, WordPt), height, () =>
        {
            var marks = new List<Primitive>();
            var x = 0.0;
            foreach (var figure in Figures)
            {
                marks.AddRange(figure.Marks(x, 0, size, WordPt));
                x += figure.Width(size) + free;
            }

            return marks;
        });
    }

    private double Size(double width)
    {
        var room = width - (Gap * (Figures.Count - 1));
        var perPoint = Figures.Sum(figure => figure.Width(100)) / 100;
        return Math.Max(SmallestPt, Math.Floor(Math.Min(LargestPt, room / perPoint) * 2) / 2);
    }
}
