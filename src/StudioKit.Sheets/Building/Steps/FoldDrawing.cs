using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>A softbox flat and folded.</summary>
internal static class FoldDrawing
{
    private const double Size = 42;

    public static Drawing Of(FoldedSoftbox box, string says)
    {
        var flat = SoftboxPattern.Of(box).Marks.Where(mark => mark is not Label).ToList();
        var bounds = new Drawing("", "", flat).Bounds;
        var scale = Size / Math.Max(bounds.Width, bounds.Height);
        var width = bounds.Width * scale;
        List<Primitive> marks = [.. flat.Select(mark => mark.Under(Similarity.Shift(-bounds.Left, -bounds.Top)).Under(new Similarity(scale, 0, 0, 0)))];
        marks.AddRange(StepDrawing.ArrowTo(new Point(width + 10, bounds.Height * scale / 2), 1, 0));
        marks.AddRange(Folded(box, 1.6 * scale).Select(mark => mark.Under(Similarity.Shift(width + 14, bounds.Height * scale / 2))));
        return new Drawing($"Fold {box.Modifier}", says, marks);
    }

    // Seen a little from the side: the head's opening behind, the glowing front before it.
    private static IEnumerable<Primitive> Folded(FoldedSoftbox box, double scale)
    {
        var (headWidth, headHeight) = (box.HeadWidth.Millimeters * scale, box.HeadHeight.Millimeters * scale);
        var (frontWidth, frontHeight, reach) = (box.FrontWidth.Millimeters * scale, box.FrontHeight.Millimeters * scale, box.Reach.Millimeters * scale);
        Point[] Corners(double x, double width, double height) => [new(x, -height / 2), new(x + (0.45 * width), (-height / 2) - (0.2 * width)), new(x + (0.45 * width), (height / 2) - (0.2 * width)), new(x, height / 2)];
        var (back, front) = (Corners(0.25 * (frontWidth - headWidth), headWidth, headHeight), Corners(reach, frontWidth, frontHeight));
        yield return new Polygon(back, new Stroke(0.55), Fill.White);
        foreach (var (one, other) in back.Zip(front))
        {
            yield return new Line(one, other, new Stroke(0.55));
        }

        yield return new Polygon(front, new Stroke(0.55), Fill.White);
    }
}
