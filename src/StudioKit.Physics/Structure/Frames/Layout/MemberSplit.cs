namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Splits lines whose pipe would not fit the pack into the fewest equal pieces.</summary>
internal static class MemberSplit
{
    public static void SplitAll(Skeleton skeleton, FrameCase design)
    {
        // Backwards, because splitting shifts the lines behind.
        for (var line = skeleton.Lines.Count - 1; line >= 0; line--)
        {
            var stops = Stops(skeleton, line, design);
            if (stops.Count > 0)
            {
                skeleton.Split(line, stops);
            }
        }
    }

    /// <summary>Middles of the couplings, from the line's start [m]; none where it fits whole or cannot be split usefully.</summary>
    private static List<double> Stops(Skeleton skeleton, int line, FrameCase design)
    {
        var gap = design.InsertionGap.Meters;
        var coupling = design.Fittings.Coupling;
        var span = skeleton.Lines[line];
        var first = TakeOff(skeleton, span.From, design) + gap;
        var pipe = skeleton.LengthOf(span) - first - TakeOff(skeleton, span.To, design) - gap;
        var lost = 2 * (coupling.TakeOff.Meters + gap);

        // n pieces and n − 1 couplings: n·p + (n − 1)·lost = pipe; a nanometre of slack keeps an exact fit whole.
        var parts = (int)Math.Min(1000, Math.Ceiling(((pipe + lost) / (design.LongestPiece.Meters + lost)) - 1e-9));
        var piece = (pipe - ((parts - 1) * lost)) / parts;
        if (parts < 2 || piece < 2 * (coupling.SocketDepth.Meters - gap))
        {
            return [];
        }

        return [.. Enumerable.Range(1, parts - 1).Select(i => first + (i * piece) + ((i - 0.5) * lost))];
    }

    private static double TakeOff(Skeleton skeleton, int joint, FrameCase design) =>
        design.Fittings.Of(skeleton.KindOf(joint)).TakeOff.Meters;
}
