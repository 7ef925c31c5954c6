using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Building;

/// <summary>Finds room for labels beside what they name, so that none covers another or a line.</summary>
internal sealed class LabelPlacer
{
    private const int Directions = 16;
    private const double Spacing = 0.6;
    private const double LineStep = 1.5;
    private const double ShortestStep = 0.8;
    private static readonly double[] Distances = [0, 2, 4.5, 7.5, 11, 15, 20, 26, 33, 41];

    private readonly List<Bounds> _taken = [];

    public void Avoid(Bounds bounds) => _taken.Add(bounds);

    /// <summary>Keeps labels off what is drawn: off lines and texts, not off the empty insides of shapes.</summary>
    public void Avoid(IReadOnlyList<Primitive> marks)
    {
        foreach (var mark in new Drawing("", "", marks).PlainMarks())
        {
            IReadOnlyList<Point> corners = mark switch
            {
                Line line => [line.From, line.To],
                Polyline line => line.Points,
                Polygon polygon => [.. polygon.Points, polygon.Points[0]],
                _ => [],
            };
            for (var i = 1; i < corners.Count; i++)
            {
                AvoidLine(corners[i - 1], corners[i], 0.2);
            }

            if (corners.Count == 0)
            {
                Avoid(mark.Bounds);
            }
        }
    }

    /// <summary>Keeps labels off a line.</summary>
    public void AvoidLine(Point from, Point to, double halfWidth)
    {
        var steps = Math.Max(1, (int)Math.Ceiling(from.DistanceTo(to) / Math.Clamp(2 * halfWidth, ShortestStep, LineStep)));
        for (var i = 0; i <= steps; i++)
        {
            var share = (double)i / steps;
            var at = new Point(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)));
            _taken.Add(new Bounds(at.X, at.Y, at.X, at.Y).Grown(halfWidth));
        }
    }

    /// <summary>A label at the nearest free place, with a leader where that is not close by.</summary>
    /// <param name="at">What it names [mm].</param>
    /// <param name="text">What it says.</param>
    /// <param name="clearance">Least distance of the text from the point [mm].</param>
    /// <param name="first">Direction to try first, clockwise from the right [rad].</param>
    /// <param name="weight">How heavy its letters are.</param>
    /// <param name="sizePt">Font size [pt].</param>
    public IEnumerable<Primitive> Place(Point at, string text, double clearance, double first, TextWeight weight = TextWeight.Bold, double sizePt = 8)
    {
        var (label, away) = Best(at, text, clearance, first, weight, sizePt);
        _taken.Add(label.Bounds.Grown(Spacing));
        return away <= Distances[1] ? [label] : [Leader(at, label), label];
    }

    // The nearest place that covers nothing; where all are taken, the one that covers least.
    private (Label Label, double Away) Best(Point at, string text, double clearance, double first, TextWeight weight, double sizePt)
    {
        var (best, least) = (default((Label, double)), int.MaxValue);
        foreach (var distance in Distances)
        {
            for (var turn = 0; turn < Directions; turn++)
            {
                var label = Candidate(at, text, clearance + distance, Turn(first, turn), weight, sizePt);
                var covers = Overlaps(label.Bounds.Grown(Spacing));
                if (covers == 0)
                {
                    return (label, distance);
                }

                (best, least) = covers < least ? ((label, distance), covers) : (best, least);
            }
        }

        return best;
    }

    // First ahead, then alternately to either side.
    private static double Turn(double first, int turn) =>
        first + (((turn + 1) / 2) * (turn % 2 == 0 ? 1 : -1) * 2 * Math.PI / Directions);

    private static Label Candidate(Point at, string text, double distance, double angle, TextWeight weight, double sizePt)
    {
        var (sin, cos) = Math.SinCos(angle);
        var middle = new Label(new Point(0, 0), text, sizePt, TextAnchor.Middle, TextRise.Middle, Weight: weight);
        var (halfWidth, halfHeight) = (middle.Bounds.Width / 2, middle.Bounds.Height / 2);
        return middle with { At = at.Plus((distance + halfWidth) * cos, (distance + halfHeight) * sin) };
    }

    private static Line Leader(Point at, Label label)
    {
        var bounds = label.Bounds;
        return new Line(at, new Point(Math.Clamp(at.X, bounds.Left, bounds.Right), Math.Clamp(at.Y, bounds.Top, bounds.Bottom)), Stroke.Thin);
    }

    // A plain loop: this is asked a hundred times a label.
    private int Overlaps(Bounds bounds)
    {
        var count = 0;
        foreach (var other in _taken)
        {
            if (other.Left < bounds.Right && other.Right > bounds.Left && other.Top < bounds.Bottom && other.Bottom > bounds.Top)
            {
                count++;
            }
        }

        return count;
    }
}
