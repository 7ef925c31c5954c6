using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Building;

/// <summary>Every kind of fitting of a frame with its pipes pushed in, all at one scale.</summary>
internal static class JointsDrawing
{
    private const double Gap = 10;
    private const double NameRoom = 9;
    private const double NamePt = 8;
    private const double LineHeight = 3.6;

    /// <summary>The joints in rows, at their size on paper, and what that is reduced by [1].</summary>
    /// <param name="frame">The frame.</param>
    /// <param name="width">Width of the page [mm].</param>
    public static (IReadOnlyList<Drawing> Rows, int Reduction) Of(FramePlan frame, double width)
    {
        var drawn = frame.Fittings.Select(fitting => (fitting.Kind, Drawing: JointDrawing.Of(frame, fitting))).ToList();
        int[] reductions = [1, 2, 5, 10];
        var reduction = reductions.FirstOrDefault(reduction => drawn.TrueForAll(joint => joint.Drawing.Scaled(1.0 / reduction).Bounds.Width <= width), reductions[^1]);
        var (rows, row, x) = (new List<Drawing>(), new List<Primitive>(), 0.0);
        foreach (var (kind, full) in drawn)
        {
            var joint = full.Scaled(1.0 / reduction);
            if (row.Count > 0 && x + joint.Bounds.Width > width)
            {
                rows.Add(Row(row, reduction));
                (row, x) = ([], 0);
            }

            row.AddRange(Named($"{joint.Title}: {JointLabels(frame, kind)}", joint, x));
            x += joint.Bounds.Width + Gap;
        }

        return (row.Count > 0 ? [.. rows, Row(row, reduction)] : rows, reduction);
    }

    private static Drawing Row(List<Primitive> marks, int reduction) =>
        new(FormattableString.Invariant($"Joints, scale 1:{reduction}"), "Fittings with their pipes pushed in, with take-off, gap and insertion", marks);

    private static IEnumerable<Primitive> Named(string name, Drawing joint, double x)
    {
        var bounds = joint.Bounds;
        var lines = Layout.TextWrap.Lines(name, bounds.Width, NamePt, TextWeight.Bold);
        var top = Math.Max(NameRoom, 4 + (lines.Count * LineHeight));
        return lines.Select(Primitive (line, i) => new Label(new Point(x, 3 + (i * LineHeight)), line, NamePt, Weight: TextWeight.Bold))
            .Concat(joint.Marks.Select(mark => mark.Under(Similarity.Shift(x - bounds.Left, top - bounds.Top))));
    }

    private static string JointLabels(FramePlan frame, FittingKind kind) =>
        string.Join(", ", frame.Geometry.Joints.Where(joint => joint.Kind == kind).Select(joint => joint.Label));
}
