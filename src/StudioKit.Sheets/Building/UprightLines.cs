using StudioKit.Kits.Uprights;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Uprights;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>The lines of an upright sheet in both views, in millimetres; up is less.</summary>
internal sealed class UprightLines(UprightStandPlan upright)
{
    private const double Beyond = 80;
    private const double PulledAt = 300;

    /// <summary>Where a spring balance pulls at a stake, over the ground.</summary>
    public static Length Pulled { get; } = Length.FromMillimeters(PulledAt);


    /// <summary>Side of the sheet across the view [mm].</summary>
    public double Width => upright.Width.Millimeters;

    /// <summary>Poles from middle to middle [mm].</summary>
    public double Spacing => upright.PoleSpacing.Millimeters;

    /// <summary>Lower edge over the ground or the rail [mm].</summary>
    public double LowerEdge => upright.LowerEdge.Millimeters;

    /// <summary>Upper edge over the ground or the rail [mm].</summary>
    public double UpperEdge => upright.UpperEdge.Millimeters;

    /// <summary>A pole's end under the ground or the rail [mm].</summary>
    public double Depth => upright.Carrier switch
    {
        UprightCarrier.Stakes => upright.StakeDepth.Millimeters * Math.Cos(upright.Lean.Radians),
        UprightCarrier.Frame => upright.PoleLength.Millimeters - UpperEdge,
        _ => 0,
    };

    /// <summary>Level of the poles' lower ends on the drawing [mm].</summary>
    public double Lowest => Up(-Depth);

    /// <summary>Half way up the sheet, where the subject is drawn [mm].</summary>
    public double SubjectUp => (LowerEdge + UpperEdge) / 2;

    /// <summary>How far back the subject is: before the sheet at its own height [mm].</summary>
    public double SubjectBack => BackAt(SubjectUp) - upright.ToSubject.Millimeters;

    /// <summary>Level of the subject on the drawing [mm].</summary>
    public double SubjectLevel => Up(SubjectUp);

    private double Diameter => upright.PipeDiameter.Millimeters;

    /// <summary>A height on the drawing.</summary>
    public static double Up(double height) => -height;

    /// <summary>How far back a pole is at a height.</summary>
    public double BackAt(double height) => height * Math.Tan(upright.Lean.Radians);

    /// <summary>The subject before the sheet.</summary>
    public IEnumerable<Primitive> Subject()
    {
        var at = new Point(SubjectBack, SubjectLevel);
        yield return new Circle(at, 12, Stroke.Edge, Fill.LightGrey);
        yield return new Label(at.Plus(0, 40), "subject", 7, TextAnchor.Middle);
    }

    /// <summary>The sheet and its clips alone, heavy.</summary>
    public IEnumerable<Primitive> SheetAlone() => Sheet(UprightStep.HangSheet);

    /// <summary>Where the sheet will be.</summary>
    public IEnumerable<Primitive> SheetToCome()
    {
        yield return Polygon.Rectangle(new Bounds(-Width / 2, Up(UpperEdge), Width / 2, Up(LowerEdge)), Stroke.Hidden);
    }

    /// <summary>As the camera sees it; after a step, or whole.</summary>
    public IEnumerable<Primitive> Front(UprightStep? after)
    {
        yield return Level(-(Width / 2) - Beyond, (Width / 2) + Beyond);
        foreach (var x in new[] { -Spacing / 2, Spacing / 2 })
        {
            if (Shown(after, PolesBy))
            {
                yield return Polygon.Rectangle(new Bounds(x - (Diameter / 2), Up(UpperEdge), x + (Diameter / 2), Lowest), Weight(after, PolesBy), Fill.LightGrey);
            }

            foreach (var coupling in Shown(after, PolesBy) ? upright.CouplingHeights : [])
            {
                var up = coupling.Millimeters * Math.Cos(upright.Lean.Radians);
                yield return Polygon.Rectangle(new Bounds(x - (0.7 * Diameter), Up(up + Diameter), x + (0.7 * Diameter), Up(up - Diameter)), Weight(after, UprightStep.JoinPoles), Fill.White);
            }

            if (upright.Carrier == UprightCarrier.Feet && Shown(after, UprightStep.StandFeet) && after != UprightStep.JoinPoles)
            {
                yield return Polygon.Rectangle(new Bounds(x - Diameter, Up(Diameter), x + Diameter, Up(0)), Weight(after, UprightStep.StandFeet), Fill.White);
            }

            if (upright.Ballast > UnitsNet.Mass.Zero && Shown(after, UprightStep.LayBallast))
            {
                yield return Polygon.Rectangle(new Bounds(x - (2 * Diameter), Up(5 * Diameter), x + (2 * Diameter), Up(Diameter)), Weight(after, UprightStep.LayBallast), Fill.Hatch);
            }
        }

        foreach (var mark in Bars(after, -(Width / 2) - (Beyond / 2), (Width / 2) + (Beyond / 2)).Concat(Sheet(after)))
        {
            yield return mark;
        }
    }

    /// <summary>From the right of the camera; after a step, or whole.</summary>
    public IEnumerable<Primitive> Side(UprightStep? after)
    {
        var reach = upright.Cords > 0 ? upright.PegDistance.Millimeters : Math.Max(upright.FootLength.Millimeters / 2, Beyond);
        yield return Level(-Math.Max(reach, after is null ? -SubjectBack : 0) - (Beyond / 2), BackAt(UpperEdge) + reach + (Beyond / 2));
        if (upright.Carrier == UprightCarrier.Feet && Shown(after, UprightStep.StandFeet) && after != UprightStep.JoinPoles)
        {
            var half = upright.FootLength.Millimeters / 2;
            yield return Polygon.Rectangle(new Bounds(-half, Up(Diameter), half, Up(0)), Weight(after, UprightStep.StandFeet), Fill.White);
        }

        if (Shown(after, PolesBy))
        {
            yield return Leaning(-Depth, UpperEdge, -Diameter / 2, Diameter / 2, Weight(after, PolesBy), Fill.LightGrey);
        }

        if (upright.Ballast > UnitsNet.Mass.Zero && Shown(after, UprightStep.LayBallast))
        {
            foreach (var side in new[] { -1, 1 })
            {
                var (near, far) = (side * 2 * Diameter, side * Math.Max(3 * Diameter, upright.FootLength.Millimeters * 0.45));
                yield return Polygon.Rectangle(new Bounds(Math.Min(near, far), Up(5 * Diameter), Math.Max(near, far), Up(Diameter)), Weight(after, UprightStep.LayBallast), Fill.Hatch);
            }
        }

        if (upright.Carrier == UprightCarrier.Frame)
        {
            foreach (var (height, by) in new[] { (0.0, UprightStep.ClipPoles), (BarUp, UprightStep.ClipBar) })
            {
                if (height >= 0 || Shown(after, by))
                {
                    yield return new Circle(new Point(-Diameter, Up(height)), Diameter / 2, height < 0 ? Weight(after, by) : Stroke.Edge, Fill.White);
                }
            }
        }

        if (Shown(after, UprightStep.HangSheet))
        {
            yield return Leaning(LowerEdge, UpperEdge, -(Diameter / 2) - 8, -Diameter / 2, Weight(after, UprightStep.HangSheet), Fill.White);
        }

        foreach (var mark in Cords(after).Concat(Pull(after)))
        {
            yield return mark;
        }
    }

    private double BarUp => (upright.BarHeight - upright.RailHeight)?.Millimeters ?? 0;

    private UprightStep PolesBy => upright.Carrier switch
    {
        UprightCarrier.Stakes => UprightStep.DriveStakes,
        UprightCarrier.Feet => UprightStep.StandFeet,
        _ => UprightStep.ClipPoles,
    };

    private IEnumerable<Primitive> Sheet(UprightStep? after)
    {
        if (!Shown(after, UprightStep.HangSheet))
        {
            yield break;
        }

        yield return Polygon.Rectangle(new Bounds(-Width / 2, Up(UpperEdge), Width / 2, Up(LowerEdge)), Weight(after, UprightStep.HangSheet));
        var along = Math.Cos(upright.Lean.Radians);
        var heights = Enumerable.Range(0, upright.ClipsPerPole).Select(i => LowerEdge + ((upright.FirstClip + (i * upright.ClipSpacing)).Millimeters * along)).Concat(upright.CornersOnClips ? [LowerEdge - (Diameter / 2)] : []);
        foreach (var up in heights)
        {
            foreach (var x in new[] { -Spacing / 2, Spacing / 2 })
            {
                yield return Polygon.Rectangle(new Bounds(x - (0.7 * Diameter), Up(up + (Diameter / 2)), x + (0.7 * Diameter), Up(up - (Diameter / 2))), null, Fill.Black);
            }
        }
    }

    private IEnumerable<Primitive> Cords(UprightStep? after)
    {
        if (upright.Cords > 0 && Shown(after, UprightStep.TieCords))
        {
            var (top, reach) = (new Point(BackAt(UpperEdge), Up(UpperEdge)), upright.PegDistance.Millimeters);
            foreach (var side in new[] { -1, 1 })
            {
                yield return new Line(top, new Point(top.X + (side * reach), Up(0)), Weight(after, UprightStep.TieCords));
                yield return new Line(new Point(top.X + (side * reach), Up(0)), new Point(top.X + (side * (reach - 25)), Up(-60)), Stroke.Heavy);
            }
        }
    }

    // Where a spring balance pulls.
    private static IEnumerable<Primitive> Pull(UprightStep? after)
    {
        if (after == UprightStep.PullStake)
        {
            yield return new Dimension(new Point(0, Up(PulledAt)), new Point(0, Up(0)), 6, DistanceFormat.Centimetres(Pulled), 7);
            yield return new Line(new Point(0, Up(PulledAt)), new Point(-120, Up(PulledAt)), Stroke.Heavy);
            yield return new Line(new Point(-120, Up(PulledAt)), new Point(-95, Up(PulledAt + 15)), Stroke.Heavy);
            yield return new Line(new Point(-120, Up(PulledAt)), new Point(-95, Up(PulledAt - 15)), Stroke.Heavy);
        }
    }

    private IEnumerable<Primitive> Bars(UprightStep? after, double left, double right)
    {
        if (upright.Carrier == UprightCarrier.Frame)
        {
            yield return Polygon.Rectangle(new Bounds(left, Up(Diameter / 2), right, Up(-Diameter / 2)), Stroke.Edge);
            if (Shown(after, UprightStep.ClipBar))
            {
                yield return Polygon.Rectangle(new Bounds(left, Up(BarUp + (Diameter / 2)), right, Up(BarUp - (Diameter / 2))), Weight(after, UprightStep.ClipBar));
            }
        }
    }

    private Line Level(double left, double right)
    {
        var ground = upright.RailHeight is { } rail ? Up(-rail.Millimeters) : Up(0);
        return new Line(new Point(left, ground), new Point(right, ground), Stroke.Edge);
    }

    private Polygon Leaning(double low, double high, double from, double to, Stroke stroke, Fill fill) => new(
        [
            new Point(BackAt(low) + from, Up(low)), new Point(BackAt(low) + to, Up(low)),
            new Point(BackAt(high) + to, Up(high)), new Point(BackAt(high) + from, Up(high)),
        ],
        stroke,
        fill);

    // Poles are there from the moment that they are joined.
    private bool Shown(UprightStep? after, UprightStep by) => after is not { } step || Place(step) >= Place(by) || (step == UprightStep.JoinPoles && by == PolesBy);

    private Stroke Weight(UprightStep? after, UprightStep by) => after == by || (after == UprightStep.JoinPoles && by == PolesBy) ? Stroke.Heavy : Stroke.Edge;

    private int Place(UprightStep step) => upright.Assembly.TakeWhile(one => one != step).Count();
}
