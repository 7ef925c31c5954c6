using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Drawings;

/// <summary>The turned rectangle that a line of text covers, from the tops of its capitals to its tails.</summary>
internal readonly struct TextBox
{
    private const double Crown = 0.74;
    private const double Tail = 0.21;

    private readonly Point[] _corners;

    private TextBox(Point[] corners) => (_corners, Bounds) = (corners, Bounds.Of(corners));

    /// <summary>The upright rectangle around it.</summary>
    public Bounds Bounds { get; }

    /// <summary>Its middle.</summary>
    public Point Middle => new((Bounds.Left + Bounds.Right) / 2, (Bounds.Top + Bounds.Bottom) / 2);

    public static TextBox Of(Label label)
    {
        var size = label.SizePt * TextMeter.MillimetresPerPoint;
        var width = TextMeter.Width(label.Text, label.SizePt, label.Weight);
        var start = label.Baseline();
        var along = new Similarity(1, label.Turn, start.X, start.Y);
        return new TextBox(
            [along.Apply(new Point(0, -Crown * size)), along.Apply(new Point(width, -Crown * size)), along.Apply(new Point(width, Tail * size)), along.Apply(new Point(0, Tail * size))]);
    }

    public TextBox Moved(double dx, double dy) => new([.. _corners.Select(corner => corner.Plus(dx, dy))]);

    /// <summary>Whether two cover each other by more than a width; a negative one is room that must stay between them.</summary>
    public bool Covers(TextBox other, double by)
    {
        if (Math.Min(Bounds.Right, other.Bounds.Right) - Math.Max(Bounds.Left, other.Bounds.Left) <= by
            || Math.Min(Bounds.Bottom, other.Bounds.Bottom) - Math.Max(Bounds.Top, other.Bounds.Top) <= by)
        {
            return false;
        }

        // Turned rectangles cover each other where no side of either parts them (the separating axis theorem).
        return !IsParted(this, other, by) && !IsParted(other, this, by);
    }

    private static bool IsParted(TextBox sides, TextBox other, double by)
    {
        for (var i = 0; i < 2; i++)
        {
            var (from, to) = (sides._corners[i], sides._corners[i + 1]);
            var length = from.DistanceTo(to);
            if (length == 0)
            {
                continue;
            }

            var (x, y) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
            var (a, b) = (Along(sides._corners, x, y), Along(other._corners, x, y));
            if (Math.Min(a.High, b.High) - Math.Max(a.Low, b.Low) <= by)
            {
                return true;
            }
        }

        return false;
    }

    private static (double Low, double High) Along(Point[] corners, double x, double y)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var corner in corners)
        {
            var at = (corner.X * x) + (corner.Y * y);
            (low, high) = (Math.Min(low, at), Math.Max(high, at));
        }

        return (low, high);
    }
}
