using UnitsNet;

namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Names the pieces that do not fit the pack or do not fill their sockets.</summary>
internal static class MemberFit
{
    private const double ToleranceMm = 1e-6;

    public static IEnumerable<FrameProblem> Problems(IReadOnlyList<FrameMember> members, Skeleton skeleton, FrameCase design)
    {
        for (var i = 0; i < members.Count; i++)
        {
            var (member, line) = (members[i], skeleton.Lines[i]);
            var cut = member.CutLength.Millimeters;
            var needed = Hold(skeleton, line.From, design) + Hold(skeleton, line.To, design);
            if (cut < needed - ToleranceMm)
            {
                yield return new FrameProblem(FrameProblemKind.SocketsNotFilled, Length.FromMillimeters(Math.Max(0, cut)), Length.FromMillimeters(needed)) { Member = member };
            }

            if (cut > design.LongestPiece.Millimeters + ToleranceMm)
            {
                yield return new FrameProblem(FrameProblemKind.PieceTooLong, member.CutLength, design.LongestPiece) { Member = member };
            }
        }
    }

    private static double Hold(Skeleton skeleton, int joint, FrameCase design) =>
        (design.Fittings.Of(skeleton.KindOf(joint)).SocketDepth - design.InsertionGap).Millimeters;
}
