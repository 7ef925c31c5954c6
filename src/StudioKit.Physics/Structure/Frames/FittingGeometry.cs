namespace StudioKit.Physics.Structure.Frames;

/// <summary>Which fitting has sockets in given directions.</summary>
internal static class FittingGeometry
{
    private const double SquareTolerance = 1e-6;

    public static FittingKind KindFor(IReadOnlyList<FramePoint> directions)
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
                    throw new InvalidOperationException("Two pipes meet at an angle that no fitting has.");
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
            _ => throw new InvalidOperationException("More pipes meet than a fitting has sockets."),
        };
    }
}
