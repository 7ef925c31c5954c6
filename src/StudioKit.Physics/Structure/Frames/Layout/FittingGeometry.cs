namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Which fitting has sockets in given directions.</summary>
internal static class FittingGeometry
{
    private const double SquareTolerance = 1e-6;

    /// <summary>The fitting; none where pipes meet at an angle, or in a number, that no fitting has.</summary>
    public static FittingKind? KindFor(IReadOnlyList<FramePoint> directions)
    {
        var straight = 0;
        for (var i = 0; i < directions.Count; i++)
        {
            for (var k = i + 1; k < directions.Count; k++)
            {
                var cosine = directions[i].Dot(directions[k]);
                if (Math.Abs(cosine + 1) < SquareTolerance)
                {
                    straight++;
                }
                else if (Math.Abs(cosine) > SquareTolerance)
                {
                    return null;
                }
            }
        }

        return (directions.Count, straight) switch
        {
            (1, 0) => FittingKind.Cap,
            (2, 1) => FittingKind.Coupling,
            (2, 0) => FittingKind.Elbow,
            (3, 1) => FittingKind.Tee,
            (3, 0) => FittingKind.Corner,
            (4, 2) => FittingKind.Cross,
            _ => null,
        };
    }
}
