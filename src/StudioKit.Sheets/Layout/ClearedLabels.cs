using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Moves the words of a drawing off each other at the size at which it is printed, and breaks those that the page does not hold.</summary>
/// <remarks>Words that have to go far are tied to their place by a thin line. What is in nobody's way stays where it was drawn.</remarks>
internal static class ClearedLabels
{
    // Boxes reach past most letters, so that this much of cover is seen by nobody.
    private const double Unseen = 0.15;

    // Room that is left around what is moved.
    private const double Clearance = 0.35;

    private const double Step = 1.1;
    private const double Farthest = 70;
    private const int Directions = 24;
    private const double NeedsLine = 3.5;

    // Beyond the drawing's own edges, words may stand as far as this [mm].
    private const double Beyond = 14;

    // Words that are in the way of others are broken into lines of this share of the page.
    private const double WidestShare = 0.34;

    /// <summary>The drawing with its words apart.</summary>
    /// <param name="drawing">The drawing at the size at which it is printed.</param>
    /// <param name="width">Width that it may take [mm].</param>
    /// <param name="beyond">How far words may stand over and under all that is drawn [mm].</param>
    public static Drawing Of(Drawing drawing, double width, double beyond = Beyond)
    {
        var texts = Texts(drawing.Marks);
        var inTheWay = InTheWay(texts);
        var bounds = drawing.Bounds;
        var tooWide = bounds.Width > width ? texts.Where(text => text.Box.Bounds.Width > WidestShare * width).Select(text => text.Mark).ToHashSet() : [];
        if (inTheWay.Count == 0 && tooWide.Count == 0)
        {
            return drawing;
        }

        var marks = new Dictionary<int, IReadOnlyList<Primitive>>();
        var taken = texts.Where(text => !inTheWay.Contains(text.Mark) && !tooWide.Contains(text.Mark)).Select(text => text.Box).ToList();
        var room = Room(bounds, width, beyond);

        // Short words first: they have no choice of form, and are many.
        foreach (var text in texts.Where(text => inTheWay.Contains(text.Mark) || tooWide.Contains(text.Mark)).OrderBy(text => TextMeter.Width(text.Label.Text, text.Label.SizePt, text.Label.Weight)))
        {
            marks[text.Mark] = Placed(drawing.Marks[text.Mark], text.Label, taken, room, bounds.Bottom, WidestShare * width);
        }

        return drawing with { Marks = [.. drawing.Marks.SelectMany((mark, i) => marks.TryGetValue(i, out var placed) ? placed : [mark])] };
    }

    private static List<(int Mark, Label Label, TextBox Box)> Texts(IReadOnlyList<Primitive> marks)
    {
        var texts = new List<(int, Label, TextBox)>();
        for (var i = 0; i < marks.Count; i++)
        {
            if (LabelOf(marks[i]) is { Text.Length: > 0 } label)
            {
                texts.Add((i, label, TextBox.Of(label)));
            }
        }

        return texts;
    }

    private static Label? LabelOf(Primitive mark) => mark switch
    {
        Label label => label,
        Dimension dimension => dimension.Marks().OfType<Label>().Single(),
        _ => null,
    };

    private static HashSet<int> InTheWay(List<(int Mark, Label Label, TextBox Box)> texts)
    {
        var found = new HashSet<int>();
        for (var i = 0; i < texts.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (texts[i].Box.Covers(texts[j].Box, Unseen))
                {
                    found.Add(texts[i].Mark);
                    found.Add(texts[j].Mark);
                }
            }
        }

        return found;
    }

    private static Bounds Room(Bounds bounds, double width, double beyond)
    {
        var beside = Math.Max(0, width - bounds.Width) / 2;
        var across = bounds.Width > width ? bounds with { Right = bounds.Left + width } : new Bounds(bounds.Left - beside, bounds.Top, bounds.Right + beside, bounds.Bottom);
        return across with { Top = bounds.Top - beyond, Bottom = bounds.Bottom + beyond };
    }

    private static IReadOnlyList<Primitive> Placed(Primitive mark, Label label, List<TextBox> taken, Bounds room, double drawn, double widest)
    {
        var lines = Broken(label, widest);
        var boxes = lines.Select(TextBox.Of).ToList();
        if (Way(boxes, taken, room) is not { } way)
        {
            (lines, way) = (Beneath(label, taken, room, drawn), (0, 0));
            boxes = [.. lines.Select(TextBox.Of)];
        }

        var (dx, dy) = way;
        taken.AddRange(boxes.Select(box => box.Moved(dx, dy)));
        IEnumerable<Primitive> others = mark is Dimension dimension ? dimension.Marks().Where(part => part is not Label) : [];
        var was = TextBox.Of(label).Middle;
        var moved = boxes.Select(box => box.Moved(dx, dy).Bounds).Aggregate((a, b) => a.With(b));
        var edge = new Point(Math.Clamp(was.X, moved.Left, moved.Right), Math.Clamp(was.Y, moved.Top, moved.Bottom));
        IEnumerable<Primitive> tie = edge.DistanceTo(was) > NeedsLine ? [new Line(edge, was, new Stroke(0.1))] : [];
        return [.. others, .. tie, .. lines.Select(line => line.Under(Similarity.Shift(dx, dy)))];
    }

    // Where no place is free, under all that is drawn, over the whole width.
    private static List<Label> Beneath(Label label, List<TextBox> taken, Bounds room, double drawn)
    {
        var top = taken.Select(box => box.Bounds.Bottom).Append(drawn).Max() + Clearance;
        return [.. TextWrap.Lines(label.Text, room.Width, label.SizePt, label.Weight).Select((line, i) => label with
        {
            Text = line,
            At = new Point(room.Left, top + (i * TypeScale.LineHeight(label.SizePt)) + TypeScale.Baseline(label.SizePt)),
            Anchor = TextAnchor.Start,
            Rise = TextRise.Baseline,
            Turn = 0,
        })];
    }

    // Lines under each other about the place that the one line had.
    private static List<Label> Broken(Label label, double widest)
    {
        if (TextMeter.Width(label.Text, label.SizePt, label.Weight) <= widest)
        {
            return [label];
        }

        var lines = TextWrap.Lines(label.Text, widest, label.SizePt, label.Weight);
        var down = new Similarity(1, label.Turn, 0, 0);
        return [.. lines.Select((line, i) =>
        {
            var shift = down.Apply(new Point(0, (i - ((lines.Count - 1) / 2.0)) * TypeScale.LineHeight(label.SizePt)));
            return label with { Text = line, At = label.At.Plus(shift.X, shift.Y) };
        })];
    }

    // The shortest way to a free place.
    private static (double Dx, double Dy)? Way(List<TextBox> boxes, List<TextBox> taken, Bounds room)
    {
        if (IsFree(0, 0))
        {
            return (0, 0);
        }

        for (var distance = Step; distance <= Farthest; distance += Step)
        {
            for (var i = 0; i < Directions; i++)
            {
                // Up and down first: lines of text are long and low.
                var (dy, dx) = Math.SinCos((Math.PI / 2) + (((i + 1) / 2) * (i % 2 == 0 ? 1 : -1) * 2 * Math.PI / Directions));
                if (IsFree(dx * distance, dy * distance))
                {
                    return (dx * distance, dy * distance);
                }
            }
        }

        return null;

        bool IsFree(double dx, double dy)
        {
            foreach (var box in boxes)
            {
                var moved = box.Moved(dx, dy);
                if (moved.Bounds.Left < room.Left || moved.Bounds.Right > room.Right || moved.Bounds.Top < room.Top || moved.Bounds.Bottom > room.Bottom)
                {
                    return false;
                }

                foreach (var other in taken)
                {
                    if (moved.Covers(other, -Clearance))
                    {
                        return false;
                    }
                }
            }

            return true;
        }
    }
}
