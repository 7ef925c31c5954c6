namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Names the pieces that do not fit the pack or do not fill their sockets.</summary>
internal static class MemberFit
{
    private const double ToleranceMm = 1e-6;

    public static IEnumerable<string> Problems(IReadOnlyList<FrameMember> members, Skeleton skeleton, FrameCase design)
    {
        for (var i = 0; i < members.Count; i++)
        {
            var (member, line) = (members[i], skeleton.Lines[i]);
            var cut = member.CutLength.Millimeters;
            var needed = Hold(skeleton, line.From, design) + Hold(skeleton, line.To, design);
            if (cut < needed - ToleranceMm)
            {
                yield return FormattableString.Invariant(
                    $"{member.Label}: {Math.Max(0, cut):0.0} mm of pipe is left between {member.From} and {member.To}, under the {needed:0.0} mm that fills both sockets.");
            }

            if (cut > design.LongestPiece.Millimeters + ToleranceMm)
            {
                yield return FormattableString.Invariant(
                    $"{member.Label}: {cut:0.0} mm does not fit a pack for {design.LongestPiece.Millimeters:0.0} mm and cannot be split further.");
            }
        }
    }

    private static double Hold(Skeleton skeleton, int joint, FrameCase design) =>
        (design.Fittings.Of(skeleton.KindOf(joint)).SocketDepth - design.InsertionGap).Millimeters;
}
