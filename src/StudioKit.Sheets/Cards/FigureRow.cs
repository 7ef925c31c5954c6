using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>Big figures beside each other, as large as the width lets them be; on two rows where they are too wide for one.</summary>
/// <param name="Figures">The figures.</param>
/// <param name="LargestPt">Largest size of the numerals [pt].</param>
/// <param name="LeastPt">Least size of the numerals [pt].</param>
/// <param name="WordPt">Size of the words over them [pt].</param>
internal sealed record FigureRow(IReadOnlyList<BigFigure> Figures, double LargestPt, double LeastPt, double WordPt = 7.5) : Block
{
    private const double Gap = 4;
    private const double RowGap = 1.5;

    public override Fit Fit(double width, double height)
    {
        if (Figures.Count > 1 && Size(width) < LeastPt)
        {
            var first = (Figures.Count + 1) / 2;
            return new Stack([this with { Figures = [.. Figures.Take(first)] }, this with { Figures = [.. Figures.Skip(first)] }], RowGap).Fit(width, height);
        }

        var size = Math.Max(Size(width), Math.Min(LeastPt, LargestPt));
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
        return Math.Floor(Math.Min(LargestPt, room / perPoint) * 2) / 2;
    }
}
