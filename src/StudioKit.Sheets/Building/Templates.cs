using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Building;

/// <summary>Templates at full size.</summary>
internal static class Templates
{
    private const double SquareSide = 100;

    /// <summary>A square to measure with a steel rule before anything is cut.</summary>
    public static Drawing CheckSquare { get; } = new(
        "Check square",
        "A square of 100 mm",
        [
            Polygon.Rectangle(new Bounds(0, 0, SquareSide, SquareSide), Stroke.Edge),
            new Label(new Point(SquareSide / 2, (SquareSide / 2) - 4), "100 mm by 100 mm", 11, TextAnchor.Middle, Weight: TextWeight.Bold),
            new Label(new Point(SquareSide / 2, (SquareSide / 2) + 3), "Measure both sides. If they are off,", 9, TextAnchor.Middle),
            new Label(new Point(SquareSide / 2, (SquareSide / 2) + 8), "print again at 100 %, not 'fit to page'.", 9, TextAnchor.Middle),
        ]);

    /// <summary>How deep each kind of fitting takes the pipe: a strip to wrap round the pipe's end.</summary>
    public static Drawing InsertionGauge(FramePlan frame)
    {
        var depths = frame.Fittings.GroupBy(fitting => Math.Round(frame.InsertionDepths[fitting.Kind].Millimeters, 2)).OrderBy(group => group.Key).ToList();
        var turn = frame.PipeGirth.Millimeters;
        var height = depths[^1].Key + 12;
        List<Primitive> marks =
        [
            Polygon.Rectangle(new Bounds(0, 0, turn, height), Stroke.Edge),
            new Label(new Point(turn / 2, 4.5), "end of the pipe at this edge", 7, TextAnchor.Middle),
        ];
        foreach (var depth in depths)
        {
            var text = $"{string.Join(", ", depth.Select(fitting => fitting.Name))}: {PlanFormat.CutLength(UnitsNet.Length.FromMillimeters(depth.Key))}";
            marks.Add(new Line(new Point(0, depth.Key), new Point(turn, depth.Key), Stroke.Heavy));
            marks.Add(new Label(new Point(turn + 3, depth.Key), text, 8, Rise: TextRise.Middle));
        }

        return new Drawing("Insertion marks, wrapped round the pipe", "A strip with a line at every insertion depth", marks);
    }

    /// <summary>Where the foot's screw goes through a cap.</summary>
    public static Drawing? FootHoleInCap(FramePlan frame) => frame.FootHole is not { } hole ? null : new(
        "Hole for the foot, on the floor of a cap",
        "A circle as wide as the pipe with the hole in its middle",
        [
            new Circle(new Point(0, 0), frame.PipeDiameter.Millimeters / 2, Stroke.Edge),
            new Circle(new Point(0, 0), hole.Millimeters / 2, Stroke.Edge),
            new Line(new Point(-frame.PipeDiameter.Millimeters, 0), new Point(frame.PipeDiameter.Millimeters, 0), Stroke.Centre),
            new Line(new Point(0, -frame.PipeDiameter.Millimeters), new Point(0, frame.PipeDiameter.Millimeters), Stroke.Centre),
            new Label(new Point(frame.PipeDiameter.Millimeters + 2, 0), $"drill {PlanFormat.AsSold(hole)}", 8, Rise: TextRise.Middle),
        ]);

    /// <summary>Clips along one edge of the panel, as strips under each other that are joined end to end.</summary>
    public static Drawing ClipStrip(FramePlan frame, PanelPlan panel)
    {
        const double Longest = 150;
        const double Pitch = 24;
        var count = (int)Math.Ceiling(panel.Width.Millimeters / Longest);
        var strip = panel.Width.Millimeters / count;
        List<Primitive> marks = [];
        for (var i = 0; i < count; i++)
        {
            marks.AddRange(Strip(i, count, strip, i * Pitch));
            marks.AddRange(frame.FrontClips.Where(clip => (int)(clip.FromLeft.Millimeters / strip) == i).SelectMany(clip => Clip(clip, clip.FromLeft.Millimeters - (i * strip), strip, i * Pitch)));
        }

        return new Drawing("Clip points along the front edge", "Strips with the place of every clip", marks);
    }

    /// <summary>The curve that the swept sheet follows.</summary>
    public static Drawing? SweepCurve(FramePlan frame)
    {
        if (frame.Sweep is not { } sweep)
        {
            return null;
        }

        var radius = sweep.Radius.Millimeters;
        return new Drawing(
            $"Sweep of the sheet's underside, radius {PlanFormat.CutLength(sweep.Radius)}",
            "The arc that the underside of the sheet follows, from the flat to its upper edge",
            [
                new Arc(new Point(0, -radius), radius, Math.PI / 2, -sweep.Angle.Radians, Stroke.Edge),
                new Line(new Point(-30, 0), new Point(0, 0), Stroke.Edge),
                new Line(new Point(0, -8), new Point(0, 8), Stroke.Thin),
                new Label(new Point(2, 7), "the flat ends here", 8),
            ]);
    }

    /// <summary>The upper corner of a skirt with its hem and its fold round the rail.</summary>
    public static Drawing? SkirtCorner(FramePlan frame)
    {
        if (frame.Seams is not { } seams)
        {
            return null;
        }

        var (hem, wrap) = (seams.SideHem.Millimeters, seams.RoundRail.Millimeters);
        return new Drawing(
            "Upper corner of a skirt, full size",
            "The corner of a skirt with its hem and the fold round the rail",
            [
                new Polyline([new Point(0, 95), new Point(0, 0), new Point(120, 0)], Stroke.Edge),
                new Line(new Point(hem, 0), new Point(hem, 95), Stroke.Hidden),
                new Line(new Point(0, wrap), new Point(120, wrap), Stroke.Hidden),
                new Label(new Point(hem + 3, 8), "fold the side hem and sew it", 8),
                new Label(new Point(hem + 3, wrap - 3), "goes round the rail, outwards", 8),
                new Label(new Point(hem + 3, wrap + 7), "hangs down", 8),
            ]);
    }

    private static IEnumerable<Primitive> Strip(int i, int count, double length, double top)
    {
        yield return Polygon.Rectangle(new Bounds(0, top, length, top + 16), Stroke.Edge);
        var (first, last) = (i == 0 ? "left edge of the panel" : $"{(char)('a' + i - 1)}", i == count - 1 ? "right edge" : $"{(char)('a' + i)}");
        yield return new Label(new Point(1.5, top + 4), first, 7);
        yield return new Label(new Point(length - 1.5, top + 4), last, 7, TextAnchor.End);
    }

    private static IEnumerable<Primitive> Clip(EdgeClip clip, double x, double length, double top)
    {
        yield return new Line(new Point(x, top), new Point(x, top + 16), Stroke.Thin);
        yield return new Circle(new Point(x, top + 16 - Math.Min(clip.FromEdge.Millimeters, 14)), 1.2, Stroke.Edge);
        var text = PlanFormat.CutLength(clip.FromLeft);
        yield return x > length - 30
            ? new Label(new Point(x - 1.5, top + 12), text, 8, TextAnchor.End)
            : new Label(new Point(x + 1.5, top + 12), text, 8);
    }
}
