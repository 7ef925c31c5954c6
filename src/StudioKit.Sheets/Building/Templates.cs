using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Building;

/// <summary>Templates at full size.</summary>
internal static class Templates
{
    private const double SquareSide = 100;
    private const double StripHeight = 11;

    // Names of fittings beside their marks.
    private const double NamesWidth = 23;
    private const double NamesPt = 8;

    // Half of the strip that is laid on a fitting for its pin.
    private const double WidestPinHalf = 18;

    // What is shown of a skirt's edges beyond its folds.
    private const double SkirtAcross = 62;
    private const double SkirtBelowFold = 8;

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
        var under = 0.0;
        foreach (var depth in depths)
        {
            var lines = TextWrap.Lines($"{string.Join(", ", depth.Select(fitting => fitting.Name))}: {CutFormat.CutLength(UnitsNet.Length.FromMillimeters(depth.Key))}", NamesWidth, NamesPt, TextWeight.Regular);
            var tall = lines.Count * TypeScale.LineHeight(NamesPt);
            var top = Math.Max(under, depth.Key - (tall / 2));
            marks.Add(new Line(new Point(0, depth.Key), new Point(turn, depth.Key), Stroke.Heavy));
            marks.Add(new Line(new Point(turn, depth.Key), new Point(turn + 2.5, top + (tall / 2)), Stroke.Thin));
            marks.AddRange(lines.Select((line, i) => new Label(new Point(turn + 3, top + (i * TypeScale.LineHeight(NamesPt)) + TypeScale.Baseline(NamesPt)), line, NamesPt)));
            under = top + tall + 1;
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

    /// <summary>Where the hole for a pin goes through a fitting and the pipe in it.</summary>
    public static Drawing? PinHole(FramePlan frame)
    {
        if (frame.Workshop.Hardware.FirstOrDefault(line => line.Kind == HardwareKind.Pin) is not { Hole: { } hole, HoleFromMouth: { } fromMouth })
        {
            return null;
        }

        var (half, reach, up) = (Math.Min(frame.PipeDiameter.Millimeters, WidestPinHalf), hole.Millimeters, fromMouth.Millimeters);
        return new Drawing(
            "Hole for a pin, its lower edge on the fitting's mouth",
            "A strip with the middle of the hole at its distance from the edge that lies on the mouth",
            [
                Polygon.Rectangle(new Bounds(-half, -up - reach - 3, half, 0), Stroke.Edge),
                new Circle(new Point(0, -up), hole.Millimeters / 2, Stroke.Edge),
                new Line(new Point(-half, -up), new Point(half, -up), Stroke.Centre),
                new Line(new Point(0, -up - reach), new Point(0, 0), Stroke.Centre),
                new Label(new Point(half + 2, -up), $"drill {PlanFormat.AsSold(hole)}", 8, Rise: TextRise.Middle),
            ]);
    }

    /// <summary>Clips along one edge of the panel, as strips under each other that are joined end to end.</summary>
    public static Drawing ClipStrip(FramePlan frame, PanelPlan panel)
    {
        const double Longest = 150;
        const double Pitch = StripHeight + 1.5;
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
            $"Sweep of the sheet's underside, radius {CutFormat.CutLength(sweep.Radius)}",
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
            "Upper corner of a skirt",
            "The corner of a skirt with its hem and the fold round the rail",
            [
                new Polyline([new Point(0, wrap + SkirtBelowFold), new Point(0, 0), new Point(SkirtAcross, 0)], Stroke.Edge),
                new Line(new Point(hem, 0), new Point(hem, wrap + SkirtBelowFold), Stroke.Hidden),
                new Line(new Point(0, wrap), new Point(SkirtAcross, wrap), Stroke.Hidden),
                new Label(new Point(hem + 3, 8), "fold and sew the hem", 8),
                new Label(new Point(hem + 3, wrap - 3), "round the rail, outwards", 8),
                new Label(new Point(hem + 3, wrap + 5.5), "hangs down", 8),
            ]);
    }

    private static IEnumerable<Primitive> Strip(int i, int count, double length, double top)
    {
        yield return Polygon.Rectangle(new Bounds(0, top, length, top + StripHeight), Stroke.Edge);
        var (first, last) = (i == 0 ? "left edge of the panel" : $"{(char)('a' + i - 1)}", i == count - 1 ? "right edge" : $"{(char)('a' + i)}");
        yield return new Label(new Point(1.5, top + 4), first, 7);
        yield return new Label(new Point(length - 1.5, top + 4), last, 7, TextAnchor.End);
    }

    private static IEnumerable<Primitive> Clip(EdgeClip clip, double x, double length, double top)
    {
        yield return new Line(new Point(x, top), new Point(x, top + StripHeight), Stroke.Thin);
        yield return new Circle(new Point(x, top + StripHeight - Math.Min(clip.FromEdge.Millimeters, StripHeight - 2)), 1.2, Stroke.Edge);
        var text = CutFormat.CutLength(clip.FromLeft);
        yield return x > length - 30
            ? new Label(new Point(x - 1.5, top + StripHeight - 2), text, 8, TextAnchor.End)
            : new Label(new Point(x + 1.5, top + StripHeight - 2), text, 8);
    }
}
