using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>A holder that is built of the frame's pipe, from the side: its pieces in their fittings, with what each is cut to and how far it goes.</summary>
internal static class HolderDrawing
{
    private const double Socket = 1.6;
    private const double SocketLength = 2.2;
    private const double Near = 9;
    private const double Far = 17;

    public static Drawing Of(BuiltHolder holder, Length pipe)
    {
        var (half, pole, arm) = (pipe.Millimeters / 2, holder.Poles * holder.PoleLength.Millimeters, holder.Arms * holder.ArmLength.Millimeters);
        List<Primitive> marks =
        [
            .. Run(holder.Poles, holder.PoleLength.Millimeters, half).Select(mark => mark.Under(new Similarity(1, -Math.PI / 2, 0, 0))),
            .. Run(holder.Arms, holder.ArmLength.Millimeters, half).Select(mark => mark.Under(Similarity.Shift(0, -pole))),
        ];
        marks.AddRange(holder.OnPeg ? Foot(half) : Clips(half));
        if (holder.Tees > 0)
        {
            marks.Add(Fitting(0, -pole, half));
        }

        marks.Add(Flash(arm, -pole, half));
        marks.AddRange(Measured(holder, pole, arm, half));
        return new Drawing($"Holder: {holder.Holder}", Says(holder, pole, arm), marks);
    }

    /// <summary>As a step leaves it: what it brings heavy, what stood before it thin, what comes later left out.</summary>
    public static Drawing Step(BuiltHolder holder, Length pipe, HolderStep step)
    {
        var (half, pole) = (pipe.Millimeters / 2, holder.Poles * holder.PoleLength.Millimeters);
        var upright = Similarity.Shift(0, 0) with { Turn = -Math.PI / 2 };
        IEnumerable<Primitive> poles = Run(holder.Poles, holder.PoleLength.Millimeters, half).Select(mark => mark.Under(upright));
        IEnumerable<Primitive> arms = Run(holder.Arms, holder.ArmLength.Millimeters, half).Select(mark => mark.Under(Similarity.Shift(0, -pole)));
        (HolderStep By, IEnumerable<Primitive> Marks)[] parts =
        [
            (holder.Assembly.Contains(HolderStep.JoinPole) ? HolderStep.JoinPole : HolderStep.StandOnPeg, poles),
            (HolderStep.StandOnPeg, holder.OnPeg ? Foot(half) : []),
            (holder.Assembly.Contains(HolderStep.JoinArm) ? HolderStep.JoinArm : holder.OnPeg ? HolderStep.TopWithBoom : HolderStep.ClipToRail, arms),
            (HolderStep.ClipToRail, holder.OnPeg ? [] : Clips(half)),
            (HolderStep.TopWithBoom, holder.Tees > 0 ? [Fitting(0, -pole, half)] : []),
            (HolderStep.FastenFlash, [Flash(holder.Arms * holder.ArmLength.Millimeters, -pole, half)]),
        ];
        var order = holder.Assembly.ToList();
        var shown = parts.Where(part => order.IndexOf(part.By) <= order.IndexOf(step));
        return new Drawing(
            HolderText.Title(step, holder), HolderText.Of(step, holder), [.. shown.SelectMany(part => part.Marks.Select(mark => Weighed(mark, part.By == step ? new Stroke(0.55) : Stroke.Thin)))]);
    }

    private static Primitive Weighed(Primitive mark, Stroke stroke) => mark switch
    {
        Polygon polygon => polygon with { Stroke = stroke },
        Line line => line with { Stroke = stroke with { Style = line.Stroke.Style } },
        _ => mark,
    };

    // Pieces end to end from the left, a coupling over each joint.
    private static IEnumerable<Primitive> Run(int count, double length, double half) => Enumerable.Range(0, count)
        .Select(Primitive (i) => Polygon.Rectangle(new Bounds(i * length, -half, (i + 1) * length, half), Stroke.Edge, Fill.White))
        .Concat(Enumerable.Range(1, Math.Max(0, count - 1)).Select(Primitive (i) => Fitting(i * length, 0, half)));

    private static Polygon Fitting(double x, double y, double half) => Polygon.Rectangle(
        new Bounds(x - (SocketLength * half), y - (Socket * half), x + (SocketLength * half), y + (Socket * half)), Stroke.Edge, Fill.LightGrey);

    // The ground, and the peg in it that the pole is pushed over.
    private static IEnumerable<Primitive> Foot(double half)
    {
        var reach = 12 * half;
        yield return new Line(new Point(-reach, 0), new Point(reach, 0), Stroke.Heavy);
        yield return new Line(new Point(0, -reach), new Point(0, reach), Stroke.Hidden);
    }

    // The rail that the arm is clipped to stands towards the reader.
    private static IEnumerable<Primitive> Clips(double half) => new[] { half * 2, half * 10 }
        .Select(Primitive (x) => Polygon.Rectangle(new Bounds(x - (half / 2), -Socket * half, x + (half / 2), Socket * half), Stroke.Edge, Fill.Black));

    private static Polygon Flash(double x, double y, double half) =>
        Polygon.Rectangle(new Bounds(x - (2 * half), y + half, x + (2 * half), y + (7 * half)), Stroke.Edge, Fill.Hatch);

    private static IEnumerable<Primitive> Measured(BuiltHolder holder, double pole, double arm, double half)
    {
        if (holder.Poles > 1)
        {
            yield return new Dimension(new Point(-half, 0), new Point(-half, -holder.PoleLength.Millimeters), -Near, CutFormat.PieceLength(holder.PoleLength));
        }

        if (holder.Poles > 0)
        {
            yield return new Dimension(new Point(-half, 0), new Point(-half, -pole), -Far, Told(pole));
        }

        if (holder.Arms > 1)
        {
            yield return new Dimension(new Point(0, -pole - half), new Point(holder.ArmLength.Millimeters, -pole - half), -Near, CutFormat.PieceLength(holder.ArmLength));
        }

        if (holder.Arms > 0)
        {
            yield return new Dimension(new Point(0, -pole - half), new Point(arm, -pole - half), -Far, Told(arm));
        }
    }

    private static string Told(double millimetres) => CutFormat.CutLength(Length.FromMillimeters(millimetres));

    private static string Says(BuiltHolder holder, double pole, double arm) => string.Join(' ', new[]
    {
        holder.Poles > 0 ? FormattableString.Invariant($"A pole of {holder.Poles} pieces, {Told(pole)} high.") : "",
        holder.Arms > 0 ? FormattableString.Invariant($"{(holder.OnPeg ? "A boom" : "An arm")} of {holder.Arms} pieces, {Told(arm)} long, the flash at its end.") : "",
    }.Where(text => text.Length > 0));
}
