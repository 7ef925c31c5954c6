using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Studio;

namespace StudioKit.Planning.Tests.Hardware;

/// <summary>Pieces cut by the table of another take-off make a frame of the same size, and stock is cut from its short pieces on.</summary>
public sealed class TakeOffTests
{
    private static readonly FittingKind[] Turning = [FittingKind.Corner, FittingKind.Elbow];

    /// <summary>Along every straight run from corner to corner the pieces, and for each of their ends take-off and gap, add up to middle to middle: with the planned fittings, and with those of the table. Each piece is rounded by a quarter of a millimetre at most; where there is no gap to grow into, down by half of one.</summary>
    [Fact]
    public void Cut_by_the_table_a_frame_keeps_its_outside_size() => FrameKits.Any.Sample(
        kit =>
        {
            if (FrameKits.FrameOf(kit) is { Geometry.GoesTogether: true } frame)
            {
                Holds(frame);
            }
        },
        iter: FrameKits.Count);

    /// <summary>By hand: A of the tall kit lies between two corners, 580 mm from middle to middle; each millimetre that the corner takes off more shortens it by two.</summary>
    [Fact]
    public void A_rail_between_two_corners_loses_twice_what_the_corner_takes_off_more()
    {
        var corner = KitText.Demo("tall-stand.yaml").Frame!.TakeOffs.Single(table => table.Kind == FittingKind.Corner);

        corner.TakeOffs.Select(takeOff => takeOff.Millimeters).Should().Equal(9, 10, 11, 13, 14, 15);
        corner.Pieces.Single(piece => piece.Pieces == "A").Cuts.Select(cut => cut!.Value.Millimeters).Should().Equal(562, 560, 558, 554, 552, 550);
    }

    [Fact]
    public void A_bar_is_cut_from_its_short_pieces_on_and_its_marks_add_up() => FrameKits.Any.Sample(
        kit =>
        {
            foreach (var bar in FrameKits.FrameOf(kit)?.PipeCuts.Bars ?? [])
            {
                bar.Marks.Select(mark => mark.Length.Millimeters).Should().BeInAscendingOrder();
                var at = 0.0;
                foreach (var mark in bar.Marks)
                {
                    at += mark.Length.Millimeters;
                    mark.End.Millimeters.Should().BeApproximately(at, 0.06 * bar.Marks.Count, "lengths are planned in tenths");
                    at += kit.Stock.Kerf.Millimeters;
                }
            }
        },
        iter: FrameKits.Count);

    private static void Holds(FramePlan frame)
    {
        var places = frame.Geometry.Joints.ToDictionary(joint => joint.Label, joint => joint, StringComparer.Ordinal);
        foreach (var table in frame.TakeOffs)
        {
            for (var i = 0; i < table.TakeOffs.Count; i++)
            {
                if (table.Pieces.Any(piece => piece.Cuts[i] is null))
                {
                    continue;
                }

                foreach (var run in Runs(frame, places))
                {
                    var built = run.Sum(member => Cut(frame, table, i, member) + TakeOff(places[member.From], table, i, member.TakeOffFrom.Millimeters) + TakeOff(places[member.To], table, i, member.TakeOffTo.Millimeters) + (2 * member.InsertionGap.Millimeters));
                    var rounding = (run[0].InsertionGap.Millimeters > 0 ? 0.2501 : 0.5001) * run.Count;
                    var foot = EndsInFoot(run, places) ? Math.Abs((table.TakeOffs[i] - table.Planned).Millimeters) : 0;
                    built.Should().BeApproximately(run.Sum(member => member.CentreLine.Millimeters), rounding + foot, $"{table.Name} at {table.TakeOffs[i].Millimeters} mm, {string.Join(", ", run.Select(member => member.Label))}");
                }
            }
        }
    }

    // A leg too low for both its sockets is as short as they let it be; its foot takes up what that changes.
    private static bool EndsInFoot(IReadOnlyList<FrameMember> run, Dictionary<string, FrameJoint> places) =>
        run.Any(member => places[member.From].Kind == FittingKind.Cap || places[member.To].Kind == FittingKind.Cap);

    private static double Cut(FramePlan frame, TakeOffTable table, int column, FrameMember member)
    {
        var row = table.Pieces.SingleOrDefault(piece => piece.Pieces == member.Group || piece.Pieces.Split(", ").Contains(member.Label));
        return (row?.Cuts[column] ?? frame.Pieces.Single(piece => piece.Group == member.Group).Rounded).Millimeters;
    }

    private static double TakeOff(FrameJoint joint, TakeOffTable table, int column, double planned) => joint.Kind == table.Kind ? table.TakeOffs[column].Millimeters : planned;

    // Straight runs from one corner, elbow or cap to another, by the labels of their pieces.
    private static IEnumerable<IReadOnlyList<FrameMember>> Runs(FramePlan frame, Dictionary<string, FrameJoint> places)
    {
        foreach (var start in frame.Geometry.Joints.Where(joint => Turning.Contains(joint.Kind)))
        {
            foreach (var first in start.Ports.Select(port => port.Member).OfType<string>())
            {
                var run = new List<FrameMember>();
                var (at, label) = (start, first);
                while (label is not null)
                {
                    var member = frame.Geometry.Members.Single(one => one.Label == label);
                    run.Add(member);
                    var next = places[member.From == at.Label ? member.To : member.From];
                    var way = 1 / (next.Position - at.Position).Norm * (next.Position - at.Position);
                    at = next;
                    label = Turning.Contains(next.Kind) || next.Kind == FittingKind.Cap
                        ? null
                        : next.Ports.Where(port => port.Member is not null && port.Member != member.Label && (port.Direction - way).Norm < 1e-6).Select(port => port.Member).FirstOrDefault();
                }

                if (Turning.Contains(at.Kind) || at.Kind == FittingKind.Cap)
                {
                    yield return run;
                }
            }
        }
    }
}
