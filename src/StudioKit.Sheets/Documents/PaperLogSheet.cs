using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents;

/// <summary>The paper log: a sheet to write on with a pencil in rain, whose boxes are the columns that the log takes rows in.</summary>
/// <remarks>Two sides: the first with the head of the session, the second with rows alone. Both bear the letters of framings and set-ups.</remarks>
internal static class PaperLogSheet
{
    private const double Margin = 12;
    private const double KeyPt = 10;
    private const double BoxPt = 7.5;
    private const double HeadRow = 9;

    // Wet fingers and a blunt pencil ask for a line of a hand's own size (common practice, no source).
    private const double RowHeight = 11.5;

    // Name, under it what to write, and how wide [mm on A4]; the order is that of the columns that rows without a head are read by.
    private static readonly (string Name, string Hint, double Width)[] Boxes =
    [
        ("time", "14:05", 19), ("animal", "name, or ? ; empty: as above", 59), ("count", "", 13), ("framing", "letter", 17), ("set-up", "letter", 16),
        ("frames", "0412-0419", 43), ("held", "since", 19), ("released", "at", 19), ("size", "mm", 15), ("sensitive", "x", 18), ("remarks", "", 0),
    ];

    private static readonly string[][] SessionHead =
    [
        ["date", "place", "people"], ["latitude, longitude, ± m", "habitat, weather", "began, ended"],
    ];

    public static Chapter Lay(Plan plan, Paper paper, Stamp stamp) => Sides(plan, paper, stamp, 2);

    /// <summary>The first side alone, or both.</summary>
    public static Chapter Sides(Plan plan, Paper paper, Stamp stamp, int count)
    {
        var setup = new PageSetup(paper, Landscape: true);
        var keys = LetterKeys.Of(plan);
        return new Chapter("Paper log", count, run => [.. Enumerable.Range(0, count).Select(side => Side(setup, keys, stamp, run, side))], []);
    }

    private static Page Side(PageSetup setup, LetterKeys keys, Stamp stamp, PageRun run, int side)
    {
        var marks = new List<Primitive>();
        var top = Title(marks, setup, stamp, run, side);
        top = side == 0 ? Head(marks, setup, top) : top;
        top = Keys(marks, setup, keys, top);
        Rows(marks, setup, top);
        return new Page(setup.Width, setup.Height, marks) { Bookmarks = side == 0 ? [new Bookmark("Paper log", 1, 0)] : [] };
    }

    private static double Title(List<Primitive> marks, PageSetup setup, Stamp stamp, PageRun run, int side)
    {
        const double Line = Margin + 3;
        var origin = $"{stamp.Origin}. Type in with 'studiokit log enter --kit'. {run.Says(side)}";
        var what = $": paper log{(side == 0 ? "" : ", continued")}";

        // A long name of the kit gives way to what it heads and to where it came from.
        var room = setup.Width - (2 * Margin) - 4 - TextMeter.Width(origin, TypeScale.Smallest, TextWeight.Regular) - TextMeter.Width(what, TypeScale.Body, TextWeight.Bold);
        marks.Add(new Label(new Point(Margin, Line), TextWrap.Shortened(stamp.KitName, room, TypeScale.Body, TextWeight.Bold) + what, TypeScale.Body, Weight: TextWeight.Bold));
        marks.Add(new Label(new Point(setup.Width - Margin, Line), origin, TypeScale.Smallest, TextAnchor.End));
        return Line + 2.5;
    }

    private static double Head(List<Primitive> marks, PageSetup setup, double top)
    {
        foreach (var boxes in SessionHead)
        {
            var width = (setup.Width - (2 * Margin)) / boxes.Length;
            for (var i = 0; i < boxes.Length; i++)
            {
                var left = Margin + (i * width);
                marks.Add(Polygon.Rectangle(new Bounds(left, top, left + width, top + HeadRow), Stroke.Thin));
                marks.Add(new Label(new Point(left + 1, top + 2.8), boxes[i], TypeScale.Smallest));
            }

            top += HeadRow;
        }

        return top + 1;
    }

    // Framings and set-ups, each a letter and its name, as many to a line as fit.
    private static double Keys(List<Primitive> marks, PageSetup setup, LetterKeys keys, double top)
    {
        foreach (var (name, list) in new[] { ("framing", keys.Framings), ("set-up", keys.SetUps) })
        {
            var x = Margin;
            top += TypeScale.LineHeight(KeyPt);
            Put(name + ":", TextWeight.Regular, 2);
            foreach (var key in list)
            {
                var width = Width(key.Letter, TextWeight.Bold) + Width(key.Name, TextWeight.Regular) + 6;
                if (x + width > setup.Width - Margin)
                {
                    x = Margin;
                    top += TypeScale.LineHeight(KeyPt);
                }

                Put(key.Letter, TextWeight.Bold, 1.2);
                Put(key.Name, TextWeight.Regular, 4.8);
            }

            void Put(string text, TextWeight weight, double gap)
            {
                marks.Add(new Label(new Point(x, top), text, KeyPt, Weight: weight));
                x += Width(text, weight) + gap;
            }
        }

        return top + 2;
    }

    private static void Rows(List<Primitive> marks, PageSetup setup, double top)
    {
        var bottom = setup.Height - Margin;
        var count = (int)((bottom - top - HeadRow) / RowHeight);
        var end = top + HeadRow + (count * RowHeight);
        for (var row = 0; row <= count; row++)
        {
            var y = top + HeadRow + (row * RowHeight);
            marks.Add(new Line(new Point(Margin, y), new Point(setup.Width - Margin, y), row == 0 ? Stroke.Edge : Stroke.Thin));
        }

        var x = Margin;
        foreach (var (name, hint, width) in Boxes)
        {
            marks.Add(new Line(new Point(x, top), new Point(x, end), Stroke.Thin));
            marks.Add(new Label(new Point(x + 1, top + 3.6), name, BoxPt, Weight: TextWeight.Bold));
            marks.Add(new Label(new Point(x + 1, top + 7.2), hint, TypeScale.Smallest));
            x += width;
        }

        marks.Add(Polygon.Rectangle(new Bounds(Margin, top, setup.Width - Margin, end), Stroke.Edge));
    }

    private static double Width(string text, TextWeight weight) => TextMeter.Width(text, KeyPt, weight);
}
