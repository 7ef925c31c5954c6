using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>Flat pattern of a folded softbox: the crossed opening for the head, four sides round it, glue flaps and lips.</summary>
internal static class SoftboxPattern
{
    private const double Tick = 6;

    public static Drawing Of(FoldedSoftbox box)
    {
        var (headWidth, headHeight) = (box.HeadWidth.Millimeters / 2, box.HeadHeight.Millimeters / 2);
        var (frontWidth, frontHeight) = (box.FrontWidth.Millimeters / 2, box.FrontHeight.Millimeters / 2);
        var (upper, side, flap) = (box.UpperSlant.Millimeters, box.SideSlant.Millimeters, box.Flap.Millimeters);
        var top = Side(headWidth, frontWidth, headHeight, upper, flap, flaps: true);
        var right = Side(headHeight, frontHeight, headWidth, side, flap, flaps: false);
        List<Primitive> marks =
        [
            .. top.Select(mark => mark.Under(new Similarity(1, 0, 0, 0))),
            .. top.Select(mark => mark.Under(new Similarity(1, Math.PI, 0, 0))),
            .. right.Select(mark => mark.Under(new Similarity(1, Math.PI / 2, 0, 0))),
            .. right.Select(mark => mark.Under(new Similarity(1, -Math.PI / 2, 0, 0))),
            Polygon.Rectangle(new Bounds(-headWidth, -headHeight, headWidth, headHeight), Stroke.Hidden),
            new Line(new Point(-headWidth, -headHeight), new Point(headWidth, headHeight), Stroke.Edge),
            new Line(new Point(-headWidth, headHeight), new Point(headWidth, -headHeight), Stroke.Edge),
            new Label(new Point(0, -headHeight - (upper / 2)), "fold away from you along dashed lines", 8, TextAnchor.Middle),
            new Label(new Point(0, headHeight + (upper / 2)), $"opening for {box.Flash}: {PlanFormat.Rectangle(box.HeadWidth, box.HeadHeight)}", 8, TextAnchor.Middle),
            new Label(new Point(headWidth + (side / 2), 0), "glue flaps inside", 8, TextAnchor.Middle),
        ];
        return new Drawing($"Flat pattern of {box.Modifier} for {box.Flash}", "One sheet with four sides, glue flaps and lips; solid lines are cut, dashed lines folded", marks);
    }

    /// <summary>Half of the pattern on one side of its upright or its level axis, as a tailor cuts on the fold: traced, turned over along the fold and traced again it is the whole.</summary>
    /// <param name="box">The softbox.</param>
    /// <param name="upright">Whether the fold is the upright axis.</param>
    public static Drawing Half(FoldedSoftbox box, bool upright)
    {
        var (whole, reach) = (Of(box), Fold(box, upright).Millimeters / 2);
        var (bounds, middle) = (whole.Bounds.Grown(1), ((upright ? box.HeadHeight + box.UpperSlant : box.HeadWidth + box.SideSlant) / 2).Millimeters);
        var lines = ClippedLines.Of(whole.Marks, upright ? bounds with { Left = 0 } : bounds with { Top = 0 });
        var (from, to) = upright ? (new Point(0, -reach), new Point(0, reach)) : (new Point(-reach, 0), new Point(reach, 0));
        return new Drawing(
            $"Half of the flat pattern of {box.Modifier} for {box.Flash}, on the fold",
            "Half of one sheet with four sides, glue flaps and lips, up to the line along which it is turned over; solid lines are cut, dashed lines folded",
            [
                .. lines,
                new Line(from, to, Stroke.Centre),
                .. new[] { from, to }.Select(end => new Line(end, upright ? end.Plus(Tick, 0) : end.Plus(0, Tick), Stroke.Heavy)),
                .. new[] { -middle, middle }.Select(along => new Label(
                    upright ? new Point(Tick / 2, along) : new Point(along, Tick), "turn over along this line", 8, TextAnchor.Middle, Turn: upright ? Math.PI / 2 : 0)),
            ]);
    }

    /// <summary>Length of the fold of a half, from edge to edge of the pattern.</summary>
    /// <param name="box">The softbox.</param>
    /// <param name="upright">Whether the fold is the upright axis.</param>
    public static Length Fold(FoldedSoftbox box, bool upright) =>
        upright ? box.HeadHeight + (2 * (box.UpperSlant + box.Flap)) : box.HeadWidth + (2 * (box.SideSlant + box.Flap));

    /// <summary>One side above the head: its fold at the head, its front edge with a lip, and its flaps.</summary>
    private static List<Primitive> Side(double head, double front, double from, double slant, double flap, bool flaps)
    {
        var (near, far) = (-from, -from - slant);
        var bevel = Math.Min(flap, slant / 4);
        List<Primitive> marks =
        [
            new Line(new Point(-front, far), new Point(front, far), Stroke.Hidden),
            new Polyline([new Point(-front, far), new Point(-front + bevel, far - flap), new Point(front - bevel, far - flap), new Point(front, far)], Stroke.Edge),
        ];
        foreach (var sign in new[] { -1, 1 })
        {
            var (inner, outer) = (new Point(sign * head, near), new Point(sign * front, far));
            marks.Add(new Line(inner, outer, flaps ? Stroke.Hidden : Stroke.Edge));
            if (flaps)
            {
                marks.Add(Flap(inner, outer, sign, flap));
            }
        }

        return marks;
    }

    // A strip along the slanting edge, on its outer side, with ends cut back so that neighbours don't meet.
    private static Polyline Flap(Point inner, Point outer, int sign, double flap)
    {
        var length = inner.DistanceTo(outer);
        var (ux, uy) = ((outer.X - inner.X) / length, (outer.Y - inner.Y) / length);
        var (nx, ny) = (-sign * uy * flap, sign * ux * flap);
        var back = Math.Min(flap, length / 4);
        return new Polyline(
            [inner, inner.Plus((2 * back * ux) + nx, (2 * back * uy) + ny), outer.Plus((-back * ux) + nx, (-back * uy) + ny), outer], Stroke.Edge);
    }
}
