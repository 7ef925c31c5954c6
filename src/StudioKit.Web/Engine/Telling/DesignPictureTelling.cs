using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Places the designs that a search found in a drawing, by the first two measures that they are compared by.</summary>
/// <param name="result">The search.</param>
internal sealed class DesignPictureTelling(DesignSearchResult result)
{
    private const double Width = 480;
    private const double Height = 360;
    private const double LeftOfMarks = 16;
    private const double Right = 456;
    private const double Top = 32;
    private const double Bottom = 290;
    private const double AroundShare = 0.08;
    private const int MostTicks = 4;

    // Room that a number takes beside its point.
    private const double LetterWidth = 10;
    private const double LetterHeight = 18;
    private const double MarkLetterWidth = 9;

    /// <summary>The drawing; none where one measure alone counts or nothing is shown.</summary>
    public DesignPicture? Of()
    {
        if (result.Aim.Measures.Count < 2 || result.Shown.Count == 0)
        {
            return null;
        }

        var up = AxisOf(result.Aim.Measures[1], Bottom, Top);
        var marks = Ticks(up);
        var left = LeftOfMarks + (MarkLetterWidth * marks.Select(mark => mark.Text.Length).DefaultIfEmpty(0).Max());
        var across = AxisOf(result.Aim.Measures[0], left, Right);
        var (acrossName, upName) = (DesignText.Name(across.Measure), DesignText.Name(up.Measure));
        var said = $"{DesignText.Number(result.Shown.Count)} designs and the kit as it is, {upName} against {acrossName}; the table has the same figures.";
        return new DesignPicture(Width, Height, said, acrossName, upName, Points(across, up)) { Frame = [left, Top, Right, Bottom], Across = Ticks(across), Up = marks };
    }

    private List<DesignPoint> Points(Axis across, Axis up)
    {
        var points = new List<DesignPoint>();
        if (result.Own.Figures is { } own && own[across.Measure] is { } x && own[up.Measure] is { } y)
        {
            points.Add(new DesignPoint(0, across.At(x), up.At(y), false));
        }

        foreach (var design in result.Shown)
        {
            var (atX, atY) = (across.At(design.Figures[across.Measure]!.Value), up.At(design.Figures[up.Measure]!.Value));
            points.Add(new DesignPoint(design.Number, atX, atY, !points.Exists(other => IsInTheWay(other, atX, atY))));
        }

        return points;
    }

    // Two numbers side by side, or a number over another's point.
    private static bool IsInTheWay(DesignPoint other, double x, double y) =>
        Math.Abs(other.Y - y) < LetterHeight && Math.Abs(other.X - x) < LetterWidth * (1 + other.Number.ToString(System.Globalization.CultureInfo.InvariantCulture).Length);

    private Axis AxisOf(DesignMeasure measure, double from, double to)
    {
        double[] amounts = [.. result.Shown.Select(design => design.Figures[measure]).Append(result.Own.Figures?[measure]).OfType<double>()];
        var (least, most) = (amounts.Min(), amounts.Max());
        var around = Math.Max((most - least) * AroundShare, DesignFigures.StepOf(measure));
        return new Axis(measure, least - around, most + around, from, to);
    }

    private List<DesignTick> Ticks(Axis axis)
    {
        var step = Math.Max(Even((axis.Most - axis.Least) / MostTicks), DesignFigures.StepOf(axis.Measure));
        var (first, last) = ((int)Math.Ceiling(axis.Least / step), (int)Math.Floor(axis.Most / step));
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(count => new DesignTick(axis.At(count * step), DesignText.Amount(axis.Measure, count * step, DesignText.CurrencyOf(result))))];
    }

    // The next of 1, 2 and 5 times a power of ten.
    private static double Even(double step)
    {
        var ten = Math.Pow(10, Math.Floor(Math.Log10(step)));
        return ten * (step / ten <= 1 ? 1 : step / ten <= 2 ? 2 : step / ten <= 5 ? 5 : 10);
    }

    private sealed record Axis(DesignMeasure Measure, double Least, double Most, double From, double To)
    {
        public double At(double amount) => Math.Round(From + ((amount - Least) / (Most - Least) * (To - From)), 1);
    }
}
