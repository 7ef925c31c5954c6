using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>Lays a step's picture out at its size on paper: bodies, arrows, names, front, and beside it what is shown larger or crossed out.</summary>
internal sealed class StepDrawing
{
    private const double InsetSize = 24;
    private const double InsetPitch = 32;
    private const double InsetGap = 3;
    private const double WordsPt = 8;
    private const double NamePt = 9;
    private const double Margin = 9;
    private const double FrontRoom = 15;
    private const double LongArrow = 6;
    private const double Head = 2.2;

    /// <summary>A piece that comes out shorter than this is shown larger [mm].</summary>
    public const double TooShort = 4;

    private readonly StepPicture _picture;
    private readonly double _width;
    private readonly double _height;

    private StepDrawing(StepPicture picture, double width, double height) => (_picture, _width, _height) = (picture, width, height);

    public static Drawing Of(string title, string says, StepPicture picture, double width, double height) =>
        new(title, says, new StepDrawing(picture, width, height).Marks());

    private List<Primitive> Marks()
    {
        var probe = Extent(new Camera(FrameView.Isometric, 1));
        var columns = Columns(_picture.Insets.Count);
        var (main, camera) = Fitted(probe, _width - (columns * (InsetSize + InsetGap)));
        if (Columns(_picture.Insets.Count + Letters(camera).Count) is var needed && needed > columns)
        {
            columns = needed;
            (main, camera) = Fitted(probe, _width - (columns * (InsetSize + InsetGap)));
        }

        return [.. main, .. Insets(main, camera, columns)];
    }

    private int Columns(int insets) => (insets + PerColumn - 1) / PerColumn;

    private int PerColumn => Math.Max(1, (int)((_height + 4) / InsetPitch));

    // Names stand outside the bodies; the scale gives way until they fit too.
    private (List<Primitive> Marks, Camera Camera) Fitted(Bounds probe, double width)
    {
        var scale = Math.Min((width - Margin - (_picture.SaysFront ? FrontRoom : 0)) / probe.Width, _height / probe.Height);
        for (var tries = 0; ; tries++)
        {
            // Bodies are drawn when their size is known; until then their bounds stand for them.
            var camera = new Camera(FrameView.Isometric, scale);
            var bodies = new Bounds(probe.Left * scale, probe.Top * scale, probe.Right * scale, probe.Bottom * scale);
            var beside = Beside(camera, bodies);
            var bounds = beside.Select(mark => mark.Bounds).Aggregate(bodies, (all, one) => all.With(one));
            var over = Math.Max(bounds.Width / width, bounds.Height / _height);
            if (over <= 1 || tries == 6)
            {
                return ([.. FarFirst.Order([.. _picture.Bodies.Select(body => body(camera))], camera).SelectMany(body => body.Marks), .. beside], camera);
            }

            scale /= over * 1.01;
        }
    }

    private Bounds Extent(Camera camera) => Bounds.Of(
        [.. _picture.Bodies.SelectMany(body => body(camera).Marks).Select(mark => mark.Bounds).SelectMany(bounds => new[] { new Point(bounds.Left, bounds.Top), new Point(bounds.Right, bounds.Bottom) }),
         .. _picture.Lines.SelectMany(line => new[] { camera.At(line.From), camera.At(line.To) })]);

    // Lines, arrows, names and the word on front.
    private List<Primitive> Beside(Camera camera, Bounds bodies)
    {
        List<Primitive> marks = [];
        var placer = new LabelPlacer();
        foreach (var bar in _picture.Bars)
        {
            placer.AvoidLine(camera.At(bar.From), camera.At(bar.To), (bar.Radius * camera.PerMetre) + 0.3);
        }

        foreach (var (from, to, stroke) in _picture.Lines)
        {
            marks.Add(new Line(camera.At(from), camera.At(to), stroke));
            placer.AvoidLine(camera.At(from), camera.At(to), 0.3);
        }

        foreach (var (from, to) in _picture.Edges)
        {
            placer.AvoidLine(camera.At(from), camera.At(to), 0.3);
        }

        foreach (var push in _picture.Pushes)
        {
            List<Primitive> arrow = [.. Pushed(push, camera, Room(push, camera))];
            placer.Avoid(arrow);
            marks.AddRange(arrow);
        }

        foreach (var name in _picture.Names)
        {
            marks.AddRange(placer.Place(camera.At(name.At), name.Text, (name.Clear * camera.PerMetre) + 0.6, 0, TextWeight.Bold, NamePt));
        }

        if (_picture.SaysFront)
        {
            var bounds = marks.Select(mark => mark.Bounds).Aggregate(bodies, (all, one) => all.With(one));
            marks.AddRange(FrontArrow.At(new Point(bounds.Right + 1, bounds.Bottom - 7), camera));
        }

        return marks;
    }

    // Arrows in line leave room for each other.
    private double Room(StepPush push, Camera camera) => _picture.Pushes
        .Where(other => other != push && (other.Way - push.Way).Norm < 1e-6)
        .Select(other => 0.75 * camera.At(other.At).DistanceTo(camera.At(push.At)))
        .Append(LongArrow).Min();

    private static IEnumerable<Primitive> Pushed(StepPush push, Camera camera, double room)
    {
        var (at, ahead) = (camera.At(push.At), camera.At(push.At + push.Way));
        var length = at.DistanceTo(ahead);
        var (dx, dy) = ((ahead.X - at.X) / length, (ahead.Y - at.Y) / length);

        // Beside the axis, on its upper or left side.
        var (nx, ny) = dy < -1e-9 || (Math.Abs(dy) <= 1e-9 && dx > 0) ? (dy, -dx) : (-dy, dx);
        (nx, ny) = ny > 1e-9 || (Math.Abs(ny) <= 1e-9 && nx > 0) ? (-nx, -ny) : (nx, ny);
        var aside = push.Aside == 0 ? 0 : (push.Aside * camera.PerMetre) + 1.4;
        var middle = at.Plus(aside * nx, aside * ny);
        var arrow = Math.Max(room, Head);
        return ArrowTo(middle.Plus(arrow / 2 * dx, arrow / 2 * dy), dx, dy, arrow);
    }

    /// <summary>An arrow that ends at a tip.</summary>
    internal static IEnumerable<Primitive> ArrowTo(Point tip, double dx, double dy, double length = LongArrow)
    {
        yield return new Line(tip.Plus(-length * dx, -length * dy), tip.Plus(-0.8 * Head * dx, -0.8 * Head * dy), Stroke.Heavy);
        yield return new Polygon(
            [tip, tip.Plus((-Head * dx) - (0.4 * Head * dy), (-Head * dy) + (0.4 * Head * dx)), tip.Plus((-Head * dx) + (0.4 * Head * dy), (-Head * dy) - (0.4 * Head * dx))], null, Fill.Black);
    }

    // One piece of each letter stands for all of them.
    private List<string> Letters(Camera camera) => _picture.Larger is null ? [] :
    [
        .. _picture.Pieces.Where(piece => piece.Length * 1000 * camera.Scale < TooShort)
            .Select(piece => piece.Label).DistinctBy(label => label.TrimEnd([.. "0123456789"]), StringComparer.Ordinal).Take(Math.Max(1, PerColumn - _picture.Insets.Count)),
    ];

    // From the top down, then in the next column to the right.
    private IEnumerable<Primitive> Insets(List<Primitive> main, Camera camera, int columns)
    {
        var bounds = new Drawing("", "", main).Bounds;
        var left = Math.Max(bounds.Right + InsetGap, bounds.Left + _width - (columns * (InsetSize + InsetGap)) + InsetGap);
        var insets = Letters(camera)
            .Select(label => (Marks: (List<Primitive>)[.. Fit(_picture.Larger!(label), InsetSize * 0.78), new Circle(new Point(0, 0), InsetSize / 2, Stroke.Edge)], Words: $"{label}, larger"))
            .Concat(_picture.Insets.Select(inset => (Marks: (List<Primitive>)[.. Fit(inset.Marks(), InsetSize * 0.85), .. Cross()], inset.Words)));
        return insets.SelectMany((inset, i) => Inset(inset.Marks, inset.Words, new Point(left + (i / PerColumn * (InsetSize + InsetGap)), bounds.Top + (i % PerColumn * InsetPitch))));
    }

    private static List<Primitive> Inset(List<Primitive> marks, string words, Point corner)
    {
        var middle = corner.Plus(InsetSize / 2, InsetSize / 2);
        List<Primitive> placed = [.. marks.Select(mark => mark.Under(Similarity.Shift(middle.X, middle.Y)))];
        placed.AddRange(Layout.TextWrap.Lines(words, InsetSize, WordsPt, TextWeight.Regular)
            .Select((line, i) => new Label(middle.Plus(0, (InsetSize / 2) + 4.2 + (i * 3.3)), line, WordsPt, TextAnchor.Middle)));
        return placed;
    }

    // About the origin.
    private static IEnumerable<Primitive> Fit(IReadOnlyList<Primitive> marks, double size)
    {
        var bounds = new Drawing("", "", marks).Bounds;
        var scale = size / Math.Max(bounds.Width, bounds.Height);
        return marks.Select(mark => mark.Under(Similarity.Shift(-(bounds.Left + bounds.Right) / 2, -(bounds.Top + bounds.Bottom) / 2)).Under(new Similarity(scale, 0, 0, 0)));
    }

    private static IEnumerable<Primitive> Cross()
    {
        const double Reach = InsetSize * 0.46;
        yield return new Line(new Point(-Reach, -Reach), new Point(Reach, Reach), new Stroke(0.5));
        yield return new Line(new Point(-Reach, Reach), new Point(Reach, -Reach), new Stroke(0.5));
    }
}
