using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace StudioKit.Sheets.Tests.OnPaper;

/// <summary>A line of text as it stands on a printed page: letters that follow each other on one baseline.</summary>
internal sealed class PrintedText(IReadOnlyList<Letter> letters)
{
    // Letters closer than a hair's breadth of print touch without a reader's noticing.
    private const double Touching = 0.3 * 72 / 25.4;

    private const double Cell = 12;

    private IReadOnlyList<Letter> Letters => letters;

    public string Text => string.Concat(letters.Select(letter => letter.Value)).Trim();

    /// <summary>Edges of its ink, from the lower left of the page [pt].</summary>
    public (double Left, double Bottom, double Right, double Top) Edges
    {
        get
        {
            var corners = Inked(letters).SelectMany(letter => Corners(letter.BoundingBox)).ToList();
            return (corners.Min(corner => corner.X), corners.Min(corner => corner.Y), corners.Max(corner => corner.X), corners.Max(corner => corner.Y));
        }
    }

    /// <summary>The texts of a page in the order in which they are drawn.</summary>
    public static IReadOnlyList<PrintedText> On(Page page)
    {
        var texts = new List<List<Letter>>();
        foreach (var letter in page.Letters)
        {
            if (texts.Count > 0 && GoesOn(texts[^1][^1], letter))
            {
                texts[^1].Add(letter);
            }
            else
            {
                texts.Add([letter]);
            }
        }

        return [.. texts.Where(text => Inked(text).Any()).Select(text => new PrintedText(text))];
    }

    /// <summary>Pairs of texts whose ink covers each other.</summary>
    public static IEnumerable<(PrintedText Lower, PrintedText Upper)> Overlaps(IReadOnlyList<PrintedText> texts)
    {
        var cells = new Dictionary<(int, int), List<(int Text, PdfPoint[] Corners)>>();
        var told = new HashSet<(int, int)>();
        for (var i = 0; i < texts.Count; i++)
        {
            foreach (var corners in Inked(texts[i].Letters).Select(letter => Corners(letter.BoundingBox)))
            {
                foreach (var cell in Cells(corners))
                {
                    if (!cells.TryGetValue(cell, out var others))
                    {
                        cells.Add(cell, others = []);
                    }

                    foreach (var other in others.Where(other => other.Text != i && Cover(other.Corners, corners) && told.Add((other.Text, i))))
                    {
                        yield return (texts[other.Text], texts[i]);
                    }

                    others.Add((i, corners));
                }
            }
        }
    }

    private static IEnumerable<Letter> Inked(IEnumerable<Letter> letters) => letters.Where(letter => !string.IsNullOrWhiteSpace(letter.Value) && letter.BoundingBox.Area > 0);

    private static bool GoesOn(Letter before, Letter next)
    {
        var size = Math.Max(before.PointSize, 1);
        var (along, up) = (Minus(before.EndBaseLine, before.StartBaseLine), Minus(next.StartBaseLine, before.EndBaseLine));
        var gap = Math.Sqrt((up.X * up.X) + (up.Y * up.Y));
        var length = Math.Sqrt((along.X * along.X) + (along.Y * along.Y));
        var aside = length == 0 ? 0 : Math.Abs((along.X * up.Y) - (along.Y * up.X)) / length;
        return Math.Abs(before.PointSize - next.PointSize) < 0.01 && gap < 0.2 * size && aside < 0.05 * size;
    }

    private static PdfPoint Minus(PdfPoint a, PdfPoint b) => new(a.X - b.X, a.Y - b.Y);

    private static PdfPoint[] Corners(PdfRectangle box) => [box.BottomLeft, box.BottomRight, box.TopRight, box.TopLeft];

    private static IEnumerable<(int, int)> Cells(PdfPoint[] corners)
    {
        for (var x = (int)Math.Floor(corners.Min(corner => corner.X) / Cell); x <= Math.Floor(corners.Max(corner => corner.X) / Cell); x++)
        {
            for (var y = (int)Math.Floor(corners.Min(corner => corner.Y) / Cell); y <= Math.Floor(corners.Max(corner => corner.Y) / Cell); y++)
            {
                yield return (x, y);
            }
        }
    }

    // Two turned rectangles cover each other where no side of either parts them (the separating axis theorem).
    private static bool Cover(PdfPoint[] a, PdfPoint[] b) => Axes(a).Concat(Axes(b)).All(axis =>
    {
        var (first, second) = (Along(a, axis), Along(b, axis));
        return Math.Min(first.High, second.High) - Math.Max(first.Low, second.Low) > Touching;
    });

    private static IEnumerable<PdfPoint> Axes(PdfPoint[] corners) => new[] { Minus(corners[1], corners[0]), Minus(corners[3], corners[0]) }
        .Select(side => (side, length: Math.Sqrt((side.X * side.X) + (side.Y * side.Y))))
        .Where(side => side.length > 0)
        .Select(side => new PdfPoint(side.side.X / side.length, side.side.Y / side.length));

    private static (double Low, double High) Along(PdfPoint[] corners, PdfPoint axis)
    {
        var places = corners.Select(corner => (corner.X * axis.X) + (corner.Y * axis.Y)).ToList();
        return (places.Min(), places.Max());
    }
}
