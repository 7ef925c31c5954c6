using StudioKit.Physics.Exposure;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>A light budget as a column: every gain and loss with its stops, and what they come to.</summary>
internal sealed record BudgetColumn(string Title, LightBudget Budget, double Pt = TypeScale.Smallest) : Block
{
    /// <summary>What the sum is called where nothing more is to be said of it.</summary>
    public const string PlainSum = "Sum, stops";

    private const double RuleRoom = 0.8;

    /// <summary>What the sum is called.</summary>
    public string Sum { get; init; } = PlainSum;

    private double StopsWidth => 1.4 * Pt;

    public override Fit Fit(double width, double height)
    {
        var title = TextWrap.Lines(Title, width, Pt, TextWeight.Bold);
        var marks = new List<Primitive>(TypeScale.Set(title, 0, Pt, TextWeight.Bold));
        var y = title.Count * TypeScale.LineHeight(Pt);
        foreach (var line in Budget.Lines)
        {
            y += Add(marks, y, width, line.Item, line.Stops, TextWeight.Regular);
        }

        marks.Add(new Line(new Point(0, y + (RuleRoom / 2)), new Point(width, y + (RuleRoom / 2)), Stroke.Thin));
        y += RuleRoom;
        y += Add(marks, y, width, Sum, Budget.Total, TextWeight.Bold);
        return Layout.Fit.WholeOrNothing(this, "The light budget", y, height, () => marks);
    }

    private double Add(List<Primitive> marks, double y, double width, string item, Stops stops, TextWeight weight)
    {
        var lines = TextWrap.Lines(item, width - StopsWidth, Pt, weight);
        marks.AddRange(TypeScale.Set(lines, 0, Pt, weight, top: y));
        marks.AddRange(TypeScale.Set([stops.ToString()], width, Pt, weight, TextAnchor.End, y));
        return lines.Count * TypeScale.LineHeight(Pt);
    }
}
