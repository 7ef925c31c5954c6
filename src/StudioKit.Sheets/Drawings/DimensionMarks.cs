using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Drawings;

/// <summary>Draws a dimension out of lines, arrow heads and text, after the habits of ISO 129-1.</summary>
internal static class DimensionMarks
{
    private const double Gap = 1;
    private const double Overrun = 1.5;
    private const double ArrowLength = 2.5;
    private const double ArrowHalfWidth = 0.45;
    private const double TextGap = 0.9;

    public static IReadOnlyList<Primitive> Of(Dimension dimension)
    {
        var length = dimension.From.DistanceTo(dimension.To);
        if (length == 0)
        {
            return [new Label(dimension.From, dimension.Text, dimension.SizePt)];
        }

        // In its own frame the measured line runs along x from 0 to length; the dimension line lies at y = offset.
        var turn = Math.Atan2(dimension.To.Y - dimension.From.Y, dimension.To.X - dimension.From.X);
        var place = new Similarity(1, turn, dimension.From.X, dimension.From.Y);
        var flat = Extensions(length, dimension.Offset).Concat(Arrows(length, dimension.Offset));
        return [.. flat.Select(mark => mark.Under(place)), Text(dimension, length, turn, place)];
    }

    private static IEnumerable<Primitive> Extensions(double length, double offset)
    {
        if (Math.Abs(offset) <= Gap)
        {
            yield break;
        }

        var away = Math.Sign(offset);
        foreach (var x in new[] { 0, length })
        {
            yield return new Line(new Point(x, away * Gap), new Point(x, offset + (away * Overrun)), Stroke.Thin);
        }
    }

    private static IEnumerable<Primitive> Arrows(double length, double y)
    {
        // Arrows that have no room between the extension lines stand outside and point inwards.
        var inside = length >= 2.5 * ArrowLength;
        var tail = inside ? ArrowLength : -ArrowLength;
        yield return inside
            ? new Line(new Point(0, y), new Point(length, y), Stroke.Thin)
            : new Line(new Point(-2 * ArrowLength, y), new Point(length + (2 * ArrowLength), y), Stroke.Thin);
        yield return Arrow(0, tail, y);
        yield return Arrow(length, length - tail, y);
    }

    private static Polygon Arrow(double tip, double tail, double y) => new(
        [new Point(tip, y), new Point(tail, y - ArrowHalfWidth), new Point(tail, y + ArrowHalfWidth)], null, Fill.Black);

    private static Label Text(Dimension dimension, double length, double turn, Similarity place)
    {
        var width = TextMeter.Width(dimension.Text, dimension.SizePt, TextWeight.Regular);
        var fits = width <= length - 1;
        var x = fits ? length / 2 : length + (2.2 * ArrowLength) + (width / 2);

        // Text reads from below or from the right, whichever way the measured points were given.
        var upsideDown = Math.Cos(turn) < -1e-9 || (Math.Abs(Math.Cos(turn)) <= 1e-9 && turn > 0);
        var y = dimension.Offset + (upsideDown ? TextGap : -TextGap);
        return new Label(
            place.Apply(new Point(x, y)), dimension.Text, dimension.SizePt, TextAnchor.Middle, Turn: upsideDown ? turn + Math.PI : turn);
    }
}
