namespace StudioKit.Field.Analysis;

/// <summary>What the subject's blocks say of its own light and of the veil over it.</summary>
internal static class SubjectLight
{
    private const double Floor = 1.0 / 65535;
    private const double Tail = 0.01;

    /// <summary>Light on its darkest parts; none without a subject.</summary>
    public static ShadowVeil? Veil(IReadOnlyList<BlockStatistics> blocks)
    {
        if (blocks.Count == 0)
        {
            return null;
        }

        var darkest = Math.Max(blocks.Select(Light).Order().ElementAt((int)(Tail * blocks.Count)), Floor);
        return new ShadowVeil(darkest, -Math.Log2(darkest));
    }

    /// <summary>Where its tones lie; none without a subject.</summary>
    public static SubjectTones? Tones(IReadOnlyList<BlockStatistics> blocks)
    {
        if (blocks.Count == 0)
        {
            return null;
        }

        var stops = blocks.Select(block => -Math.Log2(Math.Max(Light(block), Floor))).Order().ToList();
        var clipped = blocks.Sum(block => Math.Clamp(block.White, 0, 1) * block.Pixels) / blocks.Sum(block => (double)block.Pixels);
        return new SubjectTones(stops[stops.Count / 2], Math.Max(0, stops[(int)(Tail * stops.Count)]), clipped);
    }

    private static double Light(BlockStatistics block)
    {
        var (red, green, blue) = block.Mean;
        return (red + green + blue) / 3;
    }
}
