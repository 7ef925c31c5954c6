namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Puts strips of pad or ledge along the rails under the panel's edges.</summary>
internal static class RestStrips
{
    /// <summary>One strip for each piece of pipe under an edge that is to rest, from fitting to fitting.</summary>
    public static IReadOnlyList<PanelRest> Of(Skeleton skeleton, IReadOnlyList<FrameMember> members, FrameMeasures measures) =>
        [.. skeleton.Lines.Zip(members).Select(pair => Strip(skeleton, pair.First, pair.Second.Label, measures)).OfType<PanelRest>()];

    private static PanelRest? Strip(Skeleton skeleton, SkeletonLine line, string label, FrameMeasures measures)
    {
        var (from, to) = (skeleton.Joints[line.From], skeleton.Joints[line.To]);
        var (covered, left) = (Covered(skeleton, line.From, measures), Covered(skeleton, line.To, measures));
        var length = (to - from).Norm;
        if (EdgeOver(line.Role, from, to, measures) is not { } edge || length - covered - left <= 0)
        {
            return null;
        }

        var way = (1 / length) * (to - from);
        return new PanelRest(label, edge, from + (covered * way), from + ((length - left) * way));
    }

    // Behind the flat part the side rails of a swept table carry nothing: the sheet rises from them.
    private static PanelEdge? EdgeOver(FrameMemberRole role, FramePoint from, FramePoint to, FrameMeasures measures)
    {
        var (right, back) = ((from.Right + to.Right) / 2, (from.Back + to.Back) / 2);
        return role switch
        {
            FrameMemberRole.SweepRail => PanelEdge.Top,
            FrameMemberRole.CrossRail => back < 0 ? PanelEdge.Front : PanelEdge.Back,
            FrameMemberRole.SideRail when measures.Design.Rests == PanelRests.AllEdges && !BehindFlatPart(back, measures) =>
                right < 0 ? PanelEdge.Left : PanelEdge.Right,
            _ => null,
        };
    }

    private static bool BehindFlatPart(double back, FrameMeasures measures) =>
        measures.Design.Shape == FrameShape.SweptTable && back > measures.HalfDepth;

    private static double Covered(Skeleton skeleton, int joint, FrameMeasures measures)
    {
        var fitting = measures.Design.Fittings.Of(skeleton.KindOf(joint));
        return (fitting.TakeOff + fitting.SocketDepth).Meters;
    }
}
